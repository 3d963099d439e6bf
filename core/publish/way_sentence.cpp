#include "core/publish/way_sentence.h"

#include <fmt/core.h>

#include "core/nutrition/size_of_thing.h"
#include "core/nutrition/weigh.h"
#include "core/nutrition/written_amount.h"
#include "core/publish/label_basis_text.h"
#include "core/publish/measure_text.h"
#include "core/publish/number_text.h"
#include "core/publish/pool_text.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// One line with its way, on the way to words.
struct Told {
    const Dossier& dossier;
    const Line& line;
    const Food& food;
    const OpenWay& way;

    [[nodiscard]] const WayExplanation& why() const { return way.why; }
    /// A line to taste that opens a volume counts as pinches, which are parts of a teaspoon.
    [[nodiscard]] const Unit& unit() const {
        return line.unit != nullptr ? *line.unit : *findUnit("tsp", MeasureSystem::UsCustomary);
    }
    [[nodiscard]] std::string amount() const {
        return line.toTaste ? "a pinch for each portion = " + shortNumber(why().count) + " tsp"
                            : lineAmount(line);
    }
};

/// "one reading: 41 g", "2 readings: 20 g + 21 g".
std::string readingsText(const Told& told) {
    std::string sum;
    for (const std::size_t index : told.line.weighed) {
        const Reading& reading = told.dossier.readings[index];
        const Scale& scale = told.dossier.scales[told.dossier.indications[reading.gross].scale];
        const int decimals = scale.unit->symbol == "g" ? scale.readability.decimals() : 1;
        sum += fmt::format("{}{} g", sum.empty() ? "" : " + ",
                           numberAt(decimals, netGrams(told.dossier, reading)));
    }
    const std::size_t count = told.line.weighed.size();
    std::string text =
        count == 1 ? "one reading: " + sum : fmt::format("{} readings: {}", count, sum);
    if (told.way.scaled)
        text += fmt::format(", for another amount: × {}", shortNumber(told.line.weighedFactor));
    return text;
}

/// "5 readings of 5, s = 1.6 g"; of one reading no s is known, unless it is an earlier one's.
std::string seriesFacts(const PieceStatistics& series, const SeriesData& data) {
    std::string text =
        fmt::format("{} of {}",
                    series.readings == 1 ? std::string{"1 reading"}
                                         : fmt::format("{} readings", series.readings),
                    series.pieces);
    if (!series.spreadAssumed)
        text += fmt::format(", s = {} g{}", shortNumber(series.spread), poolText(data));
    return text;
}

std::string seriesText(const Told& told) {
    const PieceStatistics& series = *told.why().series;
    const SeriesData& data = told.dossier.series[told.line.series->series];
    std::string text = fmt::format("{} × {} g ({}: {})", told.amount(), shortNumber(series.mean),
                                   data.name, seriesFacts(series, data));
    if (told.way.wholeLot) return text + "; all of them were weighed, so that none scatters";
    if (told.line.series->use == SeriesUse::Among)
        text += fmt::format("; {} of them were weighed", series.pieces);
    if (told.way.spreadAssumed)
        text += fmt::format("; one reading shows no spread, {} is assumed",
                            percent(series.spread / series.mean));
    return text;
}

std::string servingsText(const Told& told) {
    const LabelFacts& label = *told.food.label;
    std::string serving = labelServingText(label);
    if (label.needsDensity())
        serving += fmt::format("{}{} g a mL", serving.empty() ? "" : ", ",
                               label.density->gramsPerMl.text());
    return fmt::format("{} × {} g (label: {})", told.amount(), shortNumber(told.why().gramsEach),
                       serving);
}

/// "usda-sr 28 04053: 1 cup = 216 g"
std::string measureSource(const Told& told) {
    const TableFood& table = *told.food.table;
    return fmt::format("{}: {}", table.row.text(), measureText(table.measures[*told.way.measure]));
}

/// What the table says of its spread, or that it says nothing.
std::string measureSpread(const Told& told) {
    if (!told.way.measure) return {};
    const HouseholdMeasure& measure = told.food.table->measures[*told.way.measure];
    if (told.why().spreadAssumed)
        return fmt::format("; the table gives no spread, {} is assumed",
                           percent(*told.why().spreadAssumed));
    return fmt::format("; the table gives s = {} g of {}", shortNumber(*measure.standardDeviation),
                       measure.n);
}

std::string sizesText(const Told& told) {
    if (!told.way.sizeNotSaid) return {};
    if (!told.why().sizes) return fmt::format("; the table names no size “{}”", told.line.size);
    return fmt::format("; the size is not said: {} g to {} g each",
                       shortNumber(told.why().sizes->low), shortNumber(told.why().sizes->high));
}

std::string scalingText(const Told& told) {
    if (!told.why().measuresDisagree) return {};
    return "; the food's measures do not scale, the nearest counts";
}

std::string tableText(const Told& told) {
    return fmt::format("{} × {} g ({})", told.amount(), shortNumber(told.why().gramsEach),
                       measureSource(told)) +
           sizesText(told) + scalingText(told) + measureSpread(told);
}

/// "0.913 g/ml (usda-sr 28 04053: 1 cup = 216 g)" or as the line states it.
std::string densityText(const Told& told) {
    const std::string density = shortNumber(*told.why().gramsPerMl) + " g/ml";
    if (told.way.measure)
        return fmt::format("{} ({})", density, measureSource(told)) + sizesText(told) +
               scalingText(told) + measureSpread(told);
    const StatedDensity& stated = *told.line.density;
    return fmt::format("{} ± {}, stated: {}", density, stated.within.text(), stated.reason);
}

/// "1 cup of 250 ml × 0.913 g/ml (...)": a unit of the metric system is its own volume.
std::string byDensityText(const Told& told) {
    const Unit& unit = told.unit();
    const std::string volume =
        unit.symbol == "ml" ? "" : fmt::format(" of {} ml", shortNumber(unit.factor.value()));
    return fmt::format("{}{} × {}", told.amount(), volume, densityText(told));
}

std::string packText(const Told& told) {
    const UnitAmount& each = *told.line.each;
    std::string text =
        fmt::format("{} × {} {} as declared", told.amount(), each.amount.text(), each.unit->symbol);
    if (told.why().gramsPerMl) text += " × " + densityText(told);
    return text;
}

/// "1 pinch = 0.313 ml ± 50 % (…) × 1.22 g/ml (…)"
std::string vagueText(const Told& told) {
    const Unit* unit = told.line.unit != nullptr ? told.line.unit : sizeOfThing(told.line);
    const std::string what =
        told.line.unit != nullptr ? told.amount() : told.amount() + " of that size";
    return fmt::format("{} × {} ml ± {} ({}) × {}", what, shortNumber(unit->factor.value()),
                       percent(*told.why().vagueness), unit->source, densityText(told));
}

std::string writtenText(const Told& told) {
    if (isStick(*told.line.unit))
        return fmt::format("{} × {} g ({})", told.amount(), shortNumber(told.why().gramsEach),
                           told.line.unit->source);
    return fmt::format("{} as written, its last digit stands for ± {} {}", told.amount(),
                       shortNumber(lastStepOf(told.line.amount) / 2), told.line.unit->symbol);
}

std::string saidAgainText(const Told& told) {
    const UnitAmount& equals = *told.line.equals;
    std::string text =
        fmt::format("the line says {} {} as well", equals.amount.text(), equals.unit->symbol);
    if (told.why().gramsPerMl) return text + " × " + densityText(told);
    if (told.way.measure) return fmt::format("{} ({})", text, measureSource(told));
    return text;
}

std::string assumedText(const Told& told) {
    const AssumedGrams& assumed = *told.line.assumed;
    return fmt::format("{} g ± {} g, assumed: {}", assumed.grams.text(), assumed.within.text(),
                       assumed.reason);
}

std::string basisText(const Told& told) {
    switch (told.why().basis) {
        case WayBasis::Readings:
            return readingsText(told);
        case WayBasis::OwnSeries:
            return seriesText(told);
        case WayBasis::LabelServings:
        case WayBasis::LabelDensity:
            return servingsText(told);
        case WayBasis::PackContent:
            return packText(told);
        case WayBasis::TableMeasure:
            return tableText(told);
        case WayBasis::MeasureDensity:
        case WayBasis::StatedDensity:
            return byDensityText(told);
        case WayBasis::CooksGrams:
            return assumedText(told);
        case WayBasis::Written:
            return writtenText(told);
        case WayBasis::SaidAgain:
            return saidAgainText(told);
        case WayBasis::MannerOfSpeech:
            return vagueText(told);
    }
    return {};
}

/// "2-3" counts as 2.5.
std::string rangeText(const Told& told) {
    const WayBasis basis = told.why().basis;
    const bool counts = basis != WayBasis::Readings && basis != WayBasis::CooksGrams &&
                        basis != WayBasis::SaidAgain && !told.line.toTaste;
    if (!counts || !told.line.amount.isRange()) return {};
    return fmt::format("; {} counts as {}", told.line.amount.text(),
                       shortNumber(told.line.amount.middle()));
}

std::string fillText(const Told& told) {
    if (!told.why().fill) return {};
    return fmt::format("; {}: × {} to {} (common practice)", wordFor(*told.line.fill, kFillWords),
                       shortNumber(told.why().fill->low), shortNumber(told.why().fill->high));
}

/// The share that is eaten and what the rest is.
std::string edibleText(const Told& told) {
    if (!told.way.trimmed || !told.why().edible) return {};
    std::string text = fmt::format("; edible share {}", shortNumber(*told.why().edible));
    if (!told.why().edibleByRefuse)
        return text + " by " + ratioName(told.dossier.series[*told.line.trim]);
    const TableFood& table = *told.food.table;
    text += fmt::format(" (refuse {} %", shortNumber(*table.refusePercent));
    return text + (table.refuseNote.empty() ? ")" : fmt::format(": {})", table.refuseNote));
}

std::string yieldText(const Told& told) {
    if (!told.way.yielded || !told.why().yielded) return {};
    const YieldData& yield = *told.line.yield;
    const std::string by =
        yield.series ? ratioName(told.dossier.series[*yield.series]) : yield.reason;
    return fmt::format("; to {}: × {} ({})", wordFor(yield.to, kFoodStateWords),
                       shortNumber(*told.why().yielded), by);
}

}  // namespace

std::string waySentence(const Dossier& dossier, std::size_t recipe, std::size_t line,
                        const OpenWay& way) {
    const Line& asked = dossier.recipes[recipe].lines[line];
    const Told told{dossier, asked, dossier.foods[std::get<FoodIndex>(asked.what).index], way};
    return basisText(told) + rangeText(told) + fillText(told) + edibleText(told) + yieldText(told);
}

}  // namespace nettare
