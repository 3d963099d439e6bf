#include "core/weighing/drift.h"

#include <algorithm>
#include <cmath>

namespace nettare {

namespace {

/// A straight line through the single means over 0, 1, 2 ...
struct StraightLine {
    double middle = 0;  ///< weighted mean of the places
    double mean = 0;    ///< of the single means there
    double slope = 0;
    double squares = 0;  ///< weighted squares of the places about their mean

    [[nodiscard]] double at(double place) const { return mean + slope * (place - middle); }
};

StraightLine lineThrough(const std::vector<SeriesReading>& readings) {
    StraightLine line;
    double pieces = 0;
    double grams = 0;
    double places = 0;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        pieces += readings[i].pieces;
        grams += readings[i].grams;
        places += readings[i].pieces * static_cast<double>(i);
    }
    line.middle = places / pieces;
    line.mean = grams / pieces;
    double products = 0;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const SeriesReading& reading = readings[i];
        const double off = static_cast<double>(i) - line.middle;
        line.squares += reading.pieces * off * off;
        products += reading.pieces * off * (reading.grams / reading.pieces - line.mean);
    }
    line.slope = products / line.squares;
    return line;
}

}  // namespace

std::optional<Drift> driftOf(const std::vector<SeriesReading>& readings,
                             const CoverageOf& coverage) {
    if (readings.size() < 4) return std::nullopt;
    const StraightLine line = lineThrough(readings);
    double squares = 0;
    double rounding = 0;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const SeriesReading& reading = readings[i];
        const double off = reading.grams / reading.pieces - line.at(static_cast<double>(i));
        squares += reading.pieces * off * off;
        rounding = std::max(rounding, reading.roundingGrams / reading.pieces);
    }
    Drift drift{line.slope, 0, static_cast<double>(readings.size() - 2), line.slope != 0};
    const double spread = std::max(std::sqrt(squares / drift.freedom), rounding);
    if (spread == 0) return drift;
    drift.t = line.slope * std::sqrt(line.squares) / spread;
    drift.significant = std::fabs(drift.t) > coverage(drift.freedom);
    return drift;
}

}  // namespace nettare
