#pragma once

#include <QString>

#include <optional>
#include <utility>
#include <vector>

#include "app/bench/bench_series.h"

namespace nettare {

/// How the readings of a series are laid out.
enum class PlotOrder {
    ByWeight,  ///< along a line of weights, equal ones on top of one another
    InTime,    ///< as they were taken, so that a drift shows
};

/// What a dot stands for, told by its shape.
enum class DotKind {
    Counted,  ///< filled disc
    Doubted,  ///< filled triangle: its scale failed a check
    LeftOut,  ///< hollow and crossed
};

/// One reading of a series: its mean of one piece, or its ratio.
struct PlotDot {
    double value = 0;
    double level = 0;  ///< by weight: its row, 0 at the foot; in time: 1 for the first reading
    DotKind kind = DotKind::Counted;
};

/// What the plot of a series shows.
struct SeriesPlot {
    PlotOrder order = PlotOrder::ByWeight;
    QString unit;      ///< "g"; empty for ratios
    int decimals = 1;  ///< of what is said of it
    std::vector<PlotDot> dots;
    /// In place of single dots where there are more than kMostDots, by weight: how many in each of
    /// equal bins over [low, high], 1 for the fullest.
    std::vector<double> bins;
    std::optional<ValueWithin> mean;
    std::optional<double> published;
    QString publishedName;       ///< "usda-sr 28 09160, 1 lime yields"
    std::vector<double> beyond;  ///< left out, and too far off to be drawn
    double low = 0, high = 1;    ///< ends of the line of weights
    /// In time: how many readings in a row a dot is the mean of, so that there are never more than
    /// kMostDots.
    std::size_t readingsADot = 1;
    double rows = 1;  ///< by weight: rows of dots; in time: readings
    std::size_t counted = 0, doubted = 0, leftOut = 0;
};

inline constexpr std::size_t kMostDots = 200;

[[nodiscard]] SeriesPlot seriesPlotOf(const BenchSeries& series, PlotOrder order);

/// Rows of dots of that width, so that none lies on another: the lowest free one, in order of
/// value; equal values are on top of one another.
[[nodiscard]] std::vector<int> stackedRows(const std::vector<double>& sorted, double dotWidth);

/// The plot as a screen reader says it.
[[nodiscard]] QString spokenPlot(const SeriesPlot& plot);

/// What its shapes mean, as far as it has them: "△ scale in doubt · ⊗ left out"; empty where all
/// are discs.
[[nodiscard]] QString plotNote(const SeriesPlot& plot);

/// A number with the decimals of the plot: "9.82 g", of ratios "64.0 %".
[[nodiscard]] QString plotNumber(const SeriesPlot& plot, double value);

}  // namespace nettare
