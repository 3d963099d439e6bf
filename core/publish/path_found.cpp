#include <fmt/core.h>

#include "core/nutrition/size_of_thing.h"
#include "core/nutrition/weigh.h"
#include "core/publish/measure_text.h"
#include "core/publish/path_work.h"
#include "core/publish/pool_text.h"

namespace nettare {

namespace {

/// Readings are written out up to so many; of more their sum.
constexpr std::size_t kWrittenReadings = 12;

/// Middle of an amount, exact where 64 bits hold it.
void byAmount(PathDraft& draft, const Amount& amount, const std::string& unit = {}) {
    const auto both = amount.low().plus(amount.high());
    const auto middle = both ? both->dividedBy(Fraction{2}) : std::nullopt;
    if (middle)
        draft.byFraction(*middle, unit);
    else
        draft.by(pathNumber(amount.middle(), unit));
}

/// What the line counts; of one to taste the teaspoons of its pinches.
void byCount(PathDraft& draft, const Line& line, const OpenWay& way, const std::string& unit = {}) {
    if (line.toTaste)
        draft.byRatio(way.why.count, unit.empty() ? " tsp" : unit, 4);
    else
        byAmount(draft, line.amount, unit);
}

/// Times what one unit is in grams or millilitres, but for those two.
void byUnit(PathDraft& draft, const Unit& unit, const std::string& of) {
    if (unit.symbol != "g" && unit.symbol != "ml") draft.by(pathNumber(unit.factor.value(), of, 4));
}

void byDensityOf(PathDraft& draft, const OpenWay& way) {
    draft.by(pathNumber(*way.why.gramsPerMl, " g/ml", 3));
}

/// Mean of a series: (9.7 g + 10.1 g) / 2.
PathDraft seriesDraft(const PathWork& work, const Line& line, const OpenWay& way) {
    const SeriesData& series = work.dossier.series[line.series->series];
    const PieceStatistics& statistics = *way.why.series;
    PathDraft mean = pathDraft(
        PathKind::Reading, "g",
        fmt::format("{}: {} of {}", series.name,
                    statistics.readings == 1 ? "1 reading"
                                             : fmt::format("{} readings", statistics.readings),
                    statistics.pieces));
    PathFactor sum;
    double all = 0;
    for (const std::size_t reading : series.readings) {
        sum.sum.push_back(pathNumber(netGrams(work.dossier, work.dossier.readings[reading]), " g"));
        all += sum.sum.back().value;
    }
    if (sum.sum.size() > kWrittenReadings) sum.sum = {pathNumber(all, " g")};
    mean.rule = PathRule::Formula;
    mean.factors.push_back(std::move(sum));
    mean.by(pathNumber(statistics.pieces), true);
    mean.value = statistics.mean;
    mean.decimals = 3;
    if (!statistics.spreadAssumed)
        mean.step.words +=
            fmt::format(", s = {} g{}", shortNumber(statistics.spread), poolText(series));
    mean.step.way = Way::Series;
    return mean;
}

void byServings(PathDraft& draft, const Line& line, const Food& food, const OpenWay& way) {
    byCount(draft, line, way);
    const bool millilitres = food.label->servingInMillilitres;
    draft.by(pathNumber(food.label->servingSize->value(), millilitres ? " ml" : " g"));
    if (millilitres) byDensityOf(draft, way);
    if (way.why.measuresPerUnit != 1) draft.byRatio(way.why.measuresPerUnit);
}

void byPack(PathDraft& draft, const Line& line, const OpenWay& way) {
    const Unit& unit = *line.each->unit;
    byCount(draft, line, way);
    byAmount(draft, line.each->amount, " " + std::string{unit.symbol});
    byUnit(draft, unit, unit.kind == UnitKind::Mass ? " g" : " ml");
    if (way.why.gramsPerMl) byDensityOf(draft, way);
}

/// An amount of a unit of mass, of a volume with its density, or of a table's measure.
void byUnitAmount(PathDraft& draft, const Amount& amount, const Unit& unit, const OpenWay& way) {
    byAmount(draft, amount, " " + std::string{unit.symbol});
    if (unit.kind != UnitKind::Mass && !way.why.gramsPerMl)
        draft.by(pathNumber(way.why.gramsEach, " g", 2));
    else
        byUnit(draft, unit, unit.kind == UnitKind::Mass ? " g" : " ml");
    if (way.why.gramsPerMl) byDensityOf(draft, way);
}

void byVolume(PathDraft& draft, const Line& line, const OpenWay& way) {
    const Unit* unit = line.unit != nullptr ? line.unit : sizeOfThing(line);
    if (unit == nullptr) unit = findUnit("tsp", MeasureSystem::UsCustomary);
    byCount(draft, line, way, " " + std::string{unit->symbol});
    byUnit(draft, *unit, " ml");
    byDensityOf(draft, way);
}

}  // namespace

PathDraft foundDraft(const PathWork& work, const Line& line, const OpenWay& way) {
    const Food& food = work.dossier.foods[std::get<FoodIndex>(line.what).index];
    PathDraft draft = pathDraft(PathKind::Grams, "g", {});
    switch (way.why.basis) {
        case WayBasis::Readings:
            break;
        case WayBasis::OwnSeries:
            byCount(draft, line, way);
            draft.by(seriesDraft(work, line, way), " g");
            break;
        case WayBasis::LabelServings:
            byServings(draft, line, food, way);
            break;
        case WayBasis::PackContent:
            byPack(draft, line, way);
            break;
        case WayBasis::TableMeasure:
            byCount(draft, line, way);
            draft.by(pathNumber(way.why.gramsEach, " g", 2));
            break;
        case WayBasis::LabelDensity:
        case WayBasis::MeasureDensity:
        case WayBasis::StatedDensity:
        case WayBasis::MannerOfSpeech:
            byVolume(draft, line, way);
            break;
        case WayBasis::CooksGrams:
            draft.value = line.assumed->grams.value();
            draft.decimals = line.assumed->grams.decimals();
            return draft;
        case WayBasis::Written:
            if (line.unit->symbol == "g" && !line.amount.isRange()) {
                const PathNumber written = pathNumber(line.amount.middle());
                draft.value = written.value;
                draft.decimals = written.decimals;
                return draft;
            }
            byUnitAmount(draft, line.amount, *line.unit, way);
            break;
        case WayBasis::SaidAgain:
            byUnitAmount(draft, line.equals->amount, *line.equals->unit, way);
            break;
    }
    return draft.computed();
}

}  // namespace nettare
