#include "core/nutrition/tried_act.h"

#include <cmath>

#include "core/label/us_rounding.h"
#include "core/nutrition/open_acts.h"
#include "core/nutrition/weigh.h"

namespace nettare {

namespace {

using PutBack = std::function<void()>;

constexpr std::int64_t kServingGrams = 30;

/// The first scale, or a new one that shows whole grams.
std::size_t scaleAtHand(Dossier& dossier) {
    if (dossier.scales.empty())
        dossier.scales.push_back(
            {"scale", "kitchen scale", findUnit("g", MeasureSystem::Metric), Decimal{1, 0}, 0});
    return 0;
}

/// Takes away what was put behind the readings and series that are there now.
PutBack cuttingBack(Dossier& dossier) {
    const auto cut = [](auto& list, std::size_t size) {
        list.erase(list.begin() + static_cast<std::ptrdiff_t>(size), list.end());
    };
    return [&dossier, cut, scales = dossier.scales.size(), indications = dossier.indications.size(),
            readings = dossier.readings.size(), series = dossier.series.size()] {
        cut(dossier.scales, scales);
        cut(dossier.indications, indications);
        cut(dossier.readings, readings);
        cut(dossier.series, series);
    };
}

/// What is about to change, and how it was.
template <class T>
PutBack restoring(Dossier& dossier, T& thing) {
    return [cut = cuttingBack(dossier), &thing, before = thing] {
        cut();
        thing = before;
    };
}

/// A reading of so many grams on an empty scale, not rounded: what the scale will round is not
/// known, only by how much.
std::size_t putOnScale(Dossier& dossier, std::size_t scale, double grams, WeighedState state) {
    const double unit = massOf(1, *dossier.scales[scale].unit).grams();
    const std::size_t tare = dossier.indications.size();
    dossier.indications.push_back({"tare", scale, Decimal{}, WeighedState::Empty, {}});
    dossier.indications.push_back({"gross", scale, Decimal::fromDouble(grams / unit), state, {}});
    dossier.readings.push_back({"net", tare + 1, Reading::ShownTare{tare}, 1});
    return dossier.readings.size() - 1;
}

/// Edible grams of a line as they would lie on the scale: before its yield, and whole where it is
/// optional.
double gramsOnScale(const LineReport& report, double tried) {
    if (report.ways.ways.empty())
        return report.asUsed.value() / tried * (report.counting == LineCounting::Between ? 2 : 1);
    const OpenWay& way = report.ways.way();
    return way.grams.value() / way.why.yielded.value_or(1);
}

PutBack weighLine(std::size_t index, Dossier& dossier, const Cooked& cooked) {
    Line& line = dossier.recipes.front().lines[index];
    PutBack back = restoring(dossier, line);
    const double grams = gramsOnScale(cooked.lines[index], line.tried);
    line.weighed = {putOnScale(dossier, scaleAtHand(dossier), grams, WeighedState::EdiblePortion)};
    line.weighedFactor = 1;
    line.way.reset();
    return back;
}

/// Two pieces that far apart, weighed one by one.
void weighPair(Dossier& dossier, std::size_t scale, double mean, double apart, WeighedState state,
               SeriesData& series) {
    for (const double grams : {mean - apart, mean + apart})
        series.readings.push_back(putOnScale(dossier, scale, grams, state));
}

/// A new series of two with that standard deviation.
SeriesData twoPieces(Dossier& dossier, double mean, double spread, WeighedState state) {
    SeriesData series;
    series.name = "two pieces";
    weighPair(dossier, scaleAtHand(dossier), mean, spread / std::sqrt(2.0), state, series);
    return series;
}

/// m - s and m + s leave both m and s of a series as they are.
PutBack weighTwoMore(std::size_t index, Dossier& dossier) {
    SeriesData& series = dossier.series[index];
    SeriesData alone = series;
    alone.pooled = false;
    alone.earlier.reset();
    const auto statistics = statisticsOf(dossier, alone, dossier.main().assumptions);
    if (!statistics) return {};
    PutBack back = restoring(dossier, series);
    const std::size_t first = dossier.readings[series.readings.front()].gross;
    weighPair(dossier, dossier.indications[first].scale, statistics->mean, statistics->spread,
              dossier.indications[first].state, series);
    return back;
}

PutBack weighTwo(std::size_t index, Dossier& dossier, const Cooked& cooked) {
    Line& line = dossier.recipes.front().lines[index];
    PutBack back = restoring(dossier, line);
    const double each = cooked.lines[index].ways.way().why.gramsEach;
    const double spread = dossier.main().assumptions.pieceSpread.value() * each;
    SeriesData series = twoPieces(dossier, each, spread, WeighedState::EdiblePortion);
    series.of = line.piece;
    dossier.series.push_back(std::move(series));
    line.series = Line::SeriesRef{dossier.series.size() - 1, SeriesUse::Among};
    line.way.reset();
    return back;
}

PutBack weighPieces(Dossier& dossier, const Cooked& cooked) {
    Recipe& recipe = dossier.recipes.front();
    if (recipe.pieceSeries) return weighTwoMore(*recipe.pieceSeries, dossier);
    PutBack back = restoring(dossier, recipe.pieceSeries);
    const double all = cooked.eaten.cooked.value_or(cooked.eaten.used).value();
    const double each = all / recipe.pieces.value();
    dossier.series.push_back(twoPieces(dossier, each, recipe.assumptions.pieceSpread.value() * each,
                                       WeighedState::Cooked));
    recipe.pieceSeries = dossier.series.size() - 1;
    return back;
}

/// A serving that no line counts by, so that the label speaks of values alone.
LabelFacts labelOf(const Composition& composition) {
    LabelFacts label;
    label.servingSize = Decimal{kServingGrams, 0};
    for (const ComponentFacts& facts : allComponents()) {
        const ComponentAmount& amount = composition[facts.component];
        if (!labelsPrint(facts.component) || amount.origin == Origin::Missing) continue;
        const auto printed = usAmountText(facts.component, amount.perGram * kServingGrams);
        if (printed) label.amounts.push_back({facts.component, *printed});
    }
    return label;
}

PutBack readItsLabel(std::size_t index, Dossier& dossier, const Cooked& cooked) {
    Food& food = dossier.foods[index];
    food.label = labelOf(cooked.compositions[index]);
    return [&food] { food.label.reset(); };
}

PutBack weighDish(Dossier& dossier, const Cooked& cooked) {
    std::vector<std::size_t>& readings = dossier.recipes.front().cooked;
    PutBack back = restoring(dossier, readings);
    readings = {
        putOnScale(dossier, scaleAtHand(dossier), cooked.eaten.used.value(), WeighedState::Cooked)};
    return back;
}

PutBack countTheMade(Dossier& dossier) {
    auto& range = dossier.recipes.front().piecesRange;
    PutBack back = restoring(dossier, range);
    range.reset();
    return back;
}

/// The mixture of all lines.
PutBack sayResidue(std::size_t index, Dossier& dossier) {
    Recipe& recipe = dossier.recipes.front();
    Residue& residue = recipe.residues[index];
    PutBack back = restoring(dossier, residue);
    residue.kind = ResidueKind::Mixture;
    residue.lines.clear();
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) residue.lines.push_back(i);
    return back;
}

}  // namespace

std::function<void()> tryAct(const Act& act, Dossier& dossier, const Cooked& cooked) {
    switch (act.kind) {
        case ActKind::WeighLine:
            return weighLine(act.index, dossier, cooked);
        case ActKind::WeighTwoMore:
            return weighTwoMore(act.index, dossier);
        case ActKind::WeighTwo:
            return weighTwo(act.index, dossier, cooked);
        case ActKind::ReadLabel:
            return readItsLabel(act.index, dossier, cooked);
        case ActKind::WeighDish:
            return weighDish(dossier, cooked);
        case ActKind::WeighPieces:
            return weighPieces(dossier, cooked);
        case ActKind::CountPieces:
            return countTheMade(dossier);
        case ActKind::SayResidue:
            return sayResidue(act.index, dossier);
    }
    return {};
}

}  // namespace nettare
