#pragma once

#include <optional>

namespace nettare {

/// Typical relative spread of household measures: the median of standard deviation / grams over the
/// measures of the table that publish one, apart for pieces and for volumes. Nothing where none
/// does.
struct MeasureSpreads {
    std::optional<double> pieceRelative;
    int pieceRows = 0;  ///< measures behind it
    std::optional<double> volumeRelative;
    int volumeRows = 0;
};

}  // namespace nettare
