#include "core/nutrition/tried_act.h"

#include <algorithm>
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

/// So many numbers whose mean square is 1, and whose mean is 0 unless there is one alone.
std::vector<double> evenScatter(int count) {
    if (count == 1) return {1};
    const bool isOdd = count % 2 != 0;
    const double apart = isOdd ? std::sqrt(count / (count - 1.0)) : 1;
    std::vector<double> scatter(isOdd ? 1 : 0);
    for (int pair = 0; pair < count / 2; ++pair)
        for (const double side : {-apart, apart}) scatter.push_back(side);
    return scatter;
}

/// As an earlier reading was taken: on its scale, in its state.
std::size_t putLike(Dossier& dossier, std::size_t reading, double grams) {
    const Indication& shown = dossier.indications[dossier.readings[reading].gross];
    return putOnScale(dossier, shown.scale, grams, shown.state);
}

/// What the readings alone say; of one that shows no spread, with what it is pooled with.
SeriesData byItself(const SeriesData& series) {
    SeriesData alone = series;
    alone.pooled = false;
    if (series.readings.size() + series.pairs.size() > 1) alone.earlier.reset();
    return alone;
}

/// As many pieces a reading as the first has.
PutBack morePieces(SeriesData& series, int more, Dossier& dossier) {
    const auto statistics = statisticsOf(dossier, byItself(series), dossier.main().assumptions);
    if (!statistics) return {};
    PutBack back = restoring(dossier, series);
    const std::size_t first = series.readings.front();
    const int pieces = dossier.readings[first].pieces;
    for (const double side : evenScatter(more)) {
        const double grams =
            pieces * statistics->mean + side * std::sqrt(pieces) * statistics->spread;
        const std::size_t added = putLike(dossier, first, grams);
        dossier.readings[added].pieces = pieces;
        series.readings.push_back(added);
    }
    return back;
}

/// Lots of the mean size.
PutBack moreRatios(SeriesData& series, int more, Dossier& dossier) {
    const auto statistics = ratioOf(dossier, byItself(series), dossier.main().assumptions);
    if (!statistics) return {};
    PutBack back = restoring(dossier, series);
    const auto [before, after] = series.pairs.front();
    for (const double side : evenScatter(more)) {
        const double share = statistics->ratio * statistics->meanBefore;
        const std::size_t lot = putLike(dossier, before, statistics->meanBefore);
        const double grams = std::max(0.0, share + side * statistics->residualSpread);
        series.pairs.emplace_back(lot, putLike(dossier, after, grams));
    }
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
    if (recipe.pieceSeries) return tryMoreOf(*recipe.pieceSeries, 2, dossier);
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

// Added pieces that scatter by s about m leave both as they are.
std::function<void()> tryMoreOf(std::size_t index, int more, Dossier& dossier) {
    SeriesData& series = dossier.series[index];
    if (more < 1) return {};
    return series.kind == SeriesKind::Ratio ? moreRatios(series, more, dossier)
                                            : morePieces(series, more, dossier);
}

std::function<void()> tryAct(const Act& act, Dossier& dossier, const Cooked& cooked) {
    switch (act.kind) {
        case ActKind::WeighLine:
            return weighLine(act.index, dossier, cooked);
        case ActKind::WeighTwoMore:
            return tryMoreOf(act.index, 2, dossier);
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
