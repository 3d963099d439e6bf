#include "core/publish/figures_json.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/publish/basis_text.h"
#include "core/publish/left_out.h"
#include "core/publish/residue_rows.h"

namespace nettare {

namespace {

/// null says "no bound", which a missing member would not.
Json orNull(const std::optional<double>& value) {
    return value ? Json{*value} : Json{};
}

/// JSON has no infinity (RFC 8259, section 6).
Json freedomJson(double freedom) {
    return std::isinf(freedom) ? Json{} : Json{freedom};
}

/// The path of one figure: all that moves it. By name, and where names are equal by sensitivity.
Json sourcesJson(Component component, const Figures& figures, const Dossier& dossier,
                 const Cooked& cooked) {
    std::vector<std::pair<std::string, Contribution>> named;
    for (const Contribution& part : contributionsTo(component, figures.block, cooked.compositions))
        named.emplace_back(nameOf(part.source, dossier), part);
    std::ranges::sort(named, {}, [](const auto& entry) {
        return std::tuple<const std::string&, double>{entry.first, entry.second.sensitivity};
    });
    Json sources = Json::array();
    for (const auto& [name, part] : named) {
        Json source = Json::object();
        source.set("name", Json{name}).set("sensitivity", Json{part.sensitivity});
        source.set("u", Json{part.source.u});
        source.set("nu", freedomJson(part.source.freedom));
        sources.append(std::move(source));
    }
    return sources;
}

Json figureJson(const Figure& figure, const Figures& figures, const Dossier& dossier,
                const Cooked& cooked) {
    const ComponentFacts& facts = factsOf(figure.component);
    const FigureInterval interval = intervalOf(figure);
    Json json = Json::object();
    json.set("component", Json{facts.tagname}).set("unit", Json{facts.unit});
    json.set("basis", Json{nameOf(figures.basis)});
    json.set("value", Json{figure.value}).set("u", Json{figure.u});
    json.set("nu", freedomJson(figure.freedom));
    json.set("low", Json{interval.low}).set("high", orNull(interval.high));
    json.set("at_least", Json{figure.atLeast}).set("at_most", orNull(figure.atMost));
    json.set("known_share", Json{figure.knownShare});
    std::vector<std::string> names;
    names.reserve(figure.missingFoods.size());
    for (const std::size_t food : figure.missingFoods) names.push_back(dossier.foods[food].name);
    std::ranges::sort(names);
    Json missing = Json::array();
    for (const std::string& name : names) missing.append(Json{name});
    json.set("missing_in", std::move(missing));
    json.set("sources", sourcesJson(figure.component, figures, dossier, cooked));
    return json;
}

/// A way that was open and not taken.
Json wayJson(const OpenWay& way) {
    Json json = Json::object();
    json.set("way", Json{nameOf(way.way)}).set("grams", Json{way.grams.value()});
    json.set("u", Json{way.grams.uncertainty()});
    return json;
}

/// Ways that disagree are shown, not averaged. A kept recipe used as an ingredient has none of its
/// own.
Json lineJson(const Line& line, const LineReport& report) {
    Json json = Json::object();
    json.set("id", Json{line.id}).set("food", Json{line.name});
    json.set("grams_used", Json{report.asUsed.value()});
    json.set("grams_eaten", Json{report.eaten.value()}).set("u", Json{report.eaten.uncertainty()});
    if (report.counting != LineCounting::Counted)
        json.set(isLeftOut(report.counting) ? "left_out" : "counted",
                 Json{reasonOf(report.counting)});
    if (report.ways.ways.empty()) return json;
    const OpenWay& chosen = report.ways.way();
    json.set("way", Json{nameOf(chosen.way)});
    Json others = Json::array();
    for (const OpenWay& way : report.ways.ways) {
        if (&way == &chosen) continue;
        const Disagreement apart = disagreement(chosen, way);
        Json other = wayJson(way);
        other.set("apart", Json{apart.relative});
        other.set("beyond_uncertainty", Json{apart.beyondUncertainty});
        others.append(std::move(other));
    }
    return json.set("alternatives", std::move(others));
}

}  // namespace

Json figuresJson(const Figures& figures, const Dossier& dossier, const Cooked& cooked) {
    const Recipe& recipe = dossier.main();
    Json json = Json::object();
    json.set("recipe", Json{recipe.title}).set("basis", Json{nameOf(figures.basis)});
    json.set("per", Json{basisText(figures, recipe)});
    json.set("of", Json{nameOf(cooked.meaning)});
    json.set("arithmetic", Json{static_cast<double>(kArithmeticVersion)});
    const auto uncounted = uncountedLines(dossier, cooked);
    if (!withoutText(uncounted).empty()) json.set("without", withoutJson(uncounted));
    if (!recipe.residues.empty()) json.set("residues", residuesJson(dossier));
    Json all = Json::array();
    for (const Figure& figure : figures.figures)
        all.append(figureJson(figure, figures, dossier, cooked));
    json.set("figures", std::move(all));
    // By id and not by place: moving a line changes no byte.
    std::vector<std::size_t> order(recipe.lines.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::ranges::sort(order, {}, [&](std::size_t i) { return recipe.lines[i].id; });
    Json lines = Json::array();
    for (const std::size_t i : order) lines.append(lineJson(recipe.lines[i], cooked.lines[i]));
    json.set("lines", std::move(lines));
    return json;
}

}  // namespace nettare
