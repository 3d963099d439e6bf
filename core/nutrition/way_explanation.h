#pragma once

#include <optional>

#include "core/quantity/interval.h"
#include "core/weighing/series.h"

namespace nettare {

/// What a way rests on; finer than Way.
enum class WayBasis {
    Readings,        ///< weighed on this line
    OwnSeries,       ///< the cook's own pieces or measures
    LabelServings,   ///< servings by the label's own measure
    LabelDensity,    ///< millilitres by the label's density
    PackContent,     ///< pieces of what their pack declares
    TableMeasure,    ///< measures of the table
    MeasureDensity,  ///< density by a measure of the same food
    StatedDensity,   ///< density that the line states
    CooksGrams,      ///< grams that the cook assumes
    Written,         ///< a weight as written
    SaidAgain,       ///< the same amount said a second time
    MannerOfSpeech,  ///< a pinch, the size of a walnut: a vague volume by the food's density
};

/// The numbers that the sentence on a way gives; what line, food and series say is read there.
/// Grams are those before the food is brought from purchased to edible and to another state.
struct WayExplanation {
    WayBasis basis = WayBasis::Written;
    double count = 1;            ///< what `gramsEach` is multiplied by: middle of the line's amount
    double gramsEach = 0;        ///< of one unit of the line; 0 where the way does not count
    double measuresPerUnit = 1;  ///< table measures or servings in one unit of the line
    std::optional<double> gramsPerMl;     ///< density used
    std::optional<double> spreadAssumed;  ///< relative standard deviation
    std::optional<PieceStatistics> series;
    std::optional<Interval> sizes;    ///< of `gramsEach`, where several measures fit
    std::optional<Interval> fill;     ///< factor of a spoon or cup that is not level
    std::optional<double> edible;     ///< edible / purchased
    bool edibleByRefuse = false;      ///< by the table's refuse; else by the cook's own series
    std::optional<double> yielded;    ///< weight after / before, to the state of the food's values
    bool measuresDisagree = false;    ///< the food's measures do not scale: the nearest was taken
    std::optional<double> vagueness;  ///< relative half-width of a vague unit
};

}  // namespace nettare
