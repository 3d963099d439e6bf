#include "core/publish/figures_record.h"

#include <cmath>

#include "core/publish/figures_json.h"
#include "core/recipe/words.h"

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

}  // namespace nettare
