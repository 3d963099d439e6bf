#include "core/weighing/outlier.h"

#include <cmath>

namespace nettare {

namespace {

std::optional<std::size_t> oddOf(const std::vector<double>& values,
                                 const std::vector<double>& roundings, const StudentLaw& student) {
    if (values.size() < 7) return std::nullopt;
    const auto count = static_cast<double>(values.size());
    const double critical = student.quantile(1 - 0.05 / (2 * count), count - 2);
    const auto odd = grubbsOutlier(values, critical);
    if (!odd) return std::nullopt;
    // Three standard uncertainties of rounding are some 1.2 steps of the scale: where all others
    // are equal, one step more is no question to a cook.
    const double off = std::fabs(values[*odd] - meanAndDeviation(values).mean);
    return off > 3 * roundings[*odd] ? odd : std::nullopt;
}

}  // namespace

std::optional<std::size_t> oddReading(const std::vector<SeriesReading>& readings,
                                      const StudentLaw& student) {
    double grams = 0;
    double pieces = 0;
    for (const SeriesReading& reading : readings) {
        grams += reading.grams;
        pieces += reading.pieces;
    }
    std::vector<double> values;
    std::vector<double> roundings;
    values.reserve(readings.size());
    roundings.reserve(readings.size());
    for (const SeriesReading& reading : readings) {
        const double root = std::sqrt(reading.pieces);
        values.push_back(root * (reading.grams / reading.pieces - grams / pieces));
        roundings.push_back(reading.roundingGrams / root);
    }
    return oddOf(values, roundings, student);
}

std::optional<std::size_t> oddReading(const std::vector<RatioReading>& readings,
                                      const StudentLaw& student) {
    double before = 0;
    double after = 0;
    for (const RatioReading& reading : readings) {
        before += reading.before;
        after += reading.after;
    }
    std::vector<double> values;
    std::vector<double> roundings;
    values.reserve(readings.size());
    roundings.reserve(readings.size());
    for (const RatioReading& reading : readings) {
        values.push_back(reading.after - after / before * reading.before);
        roundings.push_back(reading.roundingGrams);
    }
    return oddOf(values, roundings, student);
}

}  // namespace nettare
