#include "core/publish/figures_record.h"

#include <cmath>
#include <optional>
#include <string_view>
#include <utility>

#include "core/publish/figures_json.h"
#include "core/recipe/words.h"
#include "core/support/json_number.h"

namespace nettare {

namespace {

Json numberOrNull(const std::optional<double>& value) {
    return value ? Json{*value} : Json{};
}

Json recordOf(const Figure& figure) {
    const FigureInterval interval = intervalOf(figure);
    Json json = Json::object();
    json.set("component", Json{factsOf(figure.component).tagname});
    json.set("value", Json{figure.value}).set("u", Json{figure.u});
    json.set("nu", std::isinf(figure.freedom) ? Json{} : Json{figure.freedom});
    json.set("low", Json{interval.low}).set("high", numberOrNull(interval.high));
    json.set("at_least", Json{figure.atLeast});
    return json.set("at_most", numberOrNull(figure.atMost));
}

void appendMember(std::string& text, std::string_view key, const std::optional<double>& value) {
    ((text += ",\"") += key) += "\":";
    if (value)
        appendNumber(text, *value);
    else
        text += "null";
}

/// Keys in the order of their bytes; tag names need no escape.
void appendFigure(std::string& text, const Figure& figure) {
    const FigureInterval interval = intervalOf(figure);
    text += "{\"at_least\":";
    appendNumber(text, figure.atLeast);
    appendMember(text, "at_most", figure.atMost);
    ((text += ",\"component\":\"") += factsOf(figure.component).tagname) += '"';
    appendMember(text, "high", interval.high);
    appendMember(text, "low", interval.low);
    appendMember(text, "nu",
                 std::isinf(figure.freedom) ? std::nullopt : std::optional{figure.freedom});
    appendMember(text, "u", figure.u);
    appendMember(text, "value", figure.value);
    text += '}';
}

}  // namespace

Json figuresRecord(const Dossier& dossier, const Cooked& cooked) {
    Json bases = Json::array();
    for (const Word<Basis>& basis : kBasisWords) {
        const auto figures = figuresPer(basis.meaning, dossier, cooked);
        if (!figures) continue;
        Json all = Json::array();
        for (const Figure& figure : figures->figures) all.append(recordOf(figure));
        Json json = Json::object();
        json.set("basis", Json{basis.word}).set("figures", std::move(all));
        if (figures->beforeCooking) json.set("before_cooking", Json{true});
        bases.append(std::move(json));
    }
    Json record = Json::object();
    record.set("arithmetic", Json{static_cast<double>(kArithmeticVersion)});
    return record.set("bases", std::move(bases));
}

void appendFigureRecords(const Figures& figures, std::string& text) {
    char separator = '[';
    for (const Figure& figure : figures.figures) {
        text += std::exchange(separator, ',');
        appendFigure(text, figure);
    }
    text += ']';
}

std::string figuresRecordText(const Dossier& dossier, const Cooked& cooked) {
    constexpr std::size_t kUsualBytes = 40'000;
    std::string text;
    text.reserve(kUsualBytes);
    text += "{\"arithmetic\":";
    appendNumber(text, kArithmeticVersion);
    text += ",\"bases\":[";
    std::string_view separator;
    for (const Word<Basis>& basis : kBasisWords) {
        const auto figures = figuresPer(basis.meaning, dossier, cooked);
        if (!figures) continue;
        ((text += std::exchange(separator, ",")) += "{\"basis\":\"") += basis.word;
        text += figures->beforeCooking ? "\",\"before_cooking\":true" : "\"";
        text += ",\"figures\":";
        appendFigureRecords(*figures, text);
        text += '}';
    }
    return text += "]}";
}

}  // namespace nettare
