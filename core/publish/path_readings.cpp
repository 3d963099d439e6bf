#include <fmt/core.h>

#include "core/nutrition/residues.h"
#include "core/nutrition/weigh.h"
#include "core/publish/path_work.h"

namespace nettare {

namespace {

/// "2026-05-30 18:12:09" of an ISO time with offset; any other text as it is.
std::string clockText(const std::string& at) {
    constexpr std::size_t kDate = 10;
    constexpr std::size_t kSecond = 19;
    if (at.size() < kSecond || at[kDate] != 'T') return at;
    return at.substr(0, kDate) + " " + at.substr(kDate + 1, kSecond - kDate - 1);
}

std::string weighingText(const Dossier& dossier, std::size_t index) {
    const Reading& reading = dossier.readings[index];
    const Indication& gross = dossier.indications[reading.gross];
    const Scale& scale = dossier.scales[gross.scale];
    std::string text = gross.at.empty() ? "weighed" : "weighed " + clockText(gross.at);
    text += fmt::format(" on “{}”, readability {} {}", scale.name, scale.readability.text(),
                        scale.unit->symbol);
    if (const auto* known = std::get_if<Reading::KnownTare>(&reading.tare))
        text += ", tare of “" + dossier.vessels[known->vessel].name + "”";
    return text;
}

Decimal tareOf(const Dossier& dossier, const Reading& reading) {
    if (const auto* known = std::get_if<Reading::KnownTare>(&reading.tare))
        return dossier.vessels[known->vessel].tare;
    return dossier.indications[std::get<Reading::ShownTare>(reading.tare).indication].shown;
}

/// One cook's weight, and those of the other test cooks.
struct CookWeights {
    double own = 0;
    std::vector<double> others;
};

/// (590 + 610 + 600) / 3
PathDraft meanDraft(const CookWeights& weights) {
    PathDraft mean = pathDraft(PathKind::Grams, "g",
                               fmt::format("mean of {} test cooks", weights.others.size() + 1));
    PathFactor sum{{pathNumber(weights.own, " g")}};
    for (const double other : weights.others) sum.sum.push_back(pathNumber(other, " g"));
    mean.rule = PathRule::Formula;
    mean.factors.push_back(std::move(sum));
    mean.by(pathNumber(static_cast<double>(weights.others.size() + 1)), true);
    return mean.computed();
}

bool isMean(const PathWork& work, const std::vector<OtherCook>& others) {
    return work.meaning() == Meaning::RecipeMean && !others.empty();
}

double gramsOfAll(const Dossier& dossier, const std::vector<std::size_t>& readings) {
    return weighed(dossier, readings).value();
}

}  // namespace

PathDraft readingDraft(const PathWork& work, std::size_t index) {
    const Reading& reading = work.dossier.readings[index];
    const Indication& gross = work.dossier.indications[reading.gross];
    const Unit& unit = *work.dossier.scales[gross.scale].unit;
    const std::string symbol = " " + std::string{unit.symbol};
    PathDraft draft = pathDraft(PathKind::Reading, "g", weighingText(work.dossier, index));
    const Decimal tare = tareOf(work.dossier, reading);
    PathNumber less{tare.value(), tare.decimals(), symbol, true};
    draft.rule = PathRule::Formula;
    draft.factors.push_back(
        {{{gross.shown.value(), gross.shown.decimals(), symbol}, std::move(less)}});
    if (unit.symbol != "g") draft.by(pathNumber(unit.factor.value(), " g"));
    draft.value = netGrams(work.dossier, reading);
    draft.decimals = pathNumber(draft.value).decimals;
    draft.within(pathHalfWidth(weighed(work.dossier, index), work.meaning()), 1);
    draft.step.way = Way::Weighed;
    return draft;
}

PathDraft readingsDraft(const PathWork& work, const std::vector<std::size_t>& readings,
                        std::string words) {
    if (readings.size() == 1) {
        PathDraft one = readingDraft(work, readings.front());
        if (!words.empty()) one.step.words = std::move(words) + ": " + one.step.words;
        return one;
    }
    PathDraft sum = pathDraft(PathKind::Grams, "g", std::move(words));
    for (const std::size_t reading : readings) sum.add(readingDraft(work, reading));
    sum.computed().within(pathHalfWidth(weighed(work.dossier, readings), work.meaning()), 1);
    sum.step.way = Way::Weighed;
    return sum;
}

PathDraft leftOverDraft(const PathWork& work, std::size_t recipe, std::size_t index) {
    const Residue& residue = work.dossier.recipes[recipe].residues[index];
    if (!isMean(work, residue.otherCooks))
        return readingsDraft(work, residue.readings,
                             residue.called.empty() ? "left over" : residue.called);
    CookWeights weights{gramsOfAll(work.dossier, residue.readings), {}};
    for (const OtherCook& cook : residue.otherCooks)
        weights.others.push_back(gramsOfAll(work.dossier, cook.readings));
    PathDraft mean = meanDraft(weights);
    const LinearForm form =
        leftOver(work.dossier, residue, numberOf(recipe, index), work.meaning());
    return mean.within(pathHalfWidth(form, work.meaning()), 1);
}

PathDraft cookedDraft(const PathWork& work, std::size_t index) {
    const Recipe& recipe = work.dossier.recipes[index];
    if (isMean(work, recipe.otherCooks)) {
        const auto eaten = [&](const std::vector<std::size_t>& readings,
                               const std::vector<std::size_t>& notEaten) {
            return gramsOfAll(work.dossier, readings) - gramsOfAll(work.dossier, notEaten);
        };
        CookWeights weights{eaten(recipe.cooked, recipe.notEaten), {}};
        for (const OtherCook& cook : recipe.otherCooks)
            weights.others.push_back(eaten(cook.readings, cook.notEaten));
        PathDraft mean = meanDraft(weights);
        mean.step.words += ", cooked and less what is not eaten";
        return mean;
    }
    PathDraft cooked = readingsDraft(work, recipe.cooked, "cooked weight");
    if (recipe.notEaten.empty()) return cooked;
    PathDraft eaten = pathDraft(PathKind::Grams, "g", "cooked weight less what is not eaten");
    const double whole = cooked.value;
    PathDraft rest = readingsDraft(work, recipe.notEaten, "not eaten");
    PathFactor difference{
        {{whole, cooked.decimals, " g"}, {rest.value, rest.decimals, " g", true}}};
    difference.sum[0].below = 0;
    difference.sum[1].below = 1;
    eaten.rule = PathRule::Formula;
    eaten.factors.push_back(std::move(difference));
    eaten.below.push_back(std::move(cooked));
    eaten.below.push_back(std::move(rest));
    return eaten.computed();
}

}  // namespace nettare
