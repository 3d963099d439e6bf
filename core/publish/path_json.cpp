#include <string_view>

#include "core/publish/path.h"

namespace nettare {

namespace {

std::string_view kindText(PathKind kind) {
    switch (kind) {
        case PathKind::Figure:
            return "figure";
        case PathKind::Division:
            return "division";
        case PathKind::Batch:
            return "batch";
        case PathKind::Line:
            return "line";
        case PathKind::Grams:
            return "grams";
        case PathKind::Reading:
            return "reading";
        case PathKind::Value:
            return "value";
        case PathKind::Kept:
            return "kept recipe";
        case PathKind::Missing:
            return "missing";
    }
    return {};
}

}  // namespace

Json pathJson(const PathStep& path) {
    Json json = Json::object();
    json.set("kind", Json{kindText(path.kind)});
    json.set("value", Json{path.value}).set("unit", Json{path.unit});
    if (!path.plusMinus.empty()) json.set("plus_minus", Json{path.plusMinus});
    if (!path.formula.empty()) json.set("formula", Json{path.formula});
    json.set("words", Json{path.words});
    if (!path.more.empty()) json.set("more", Json{path.more});
    if (path.way) json.set("way", Json{nameOf(*path.way)});
    if (path.below.empty()) return json;
    Json below = Json::array();
    for (const PathStep& step : path.below) below.append(pathJson(step));
    return json.set("below", std::move(below));
}

}  // namespace nettare
