#include "app/bench/series_plot.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct SeriesPlotWords {
    Q_DECLARE_TR_FUNCTIONS(SeriesPlot)
};

constexpr double kDotsAcross = 46;  // discs that stand side by side
constexpr double kAirShare = 0.08;
constexpr std::size_t kSeriesBins = 48;
/// How far off, in widths of what counts, a reading that was left out is still drawn.
constexpr double kDrawnWidths = 10;

/// The value of one reading; nothing where it has none.
std::optional<double> valueOf(const LedgerReading& reading, SeriesKind kind) {
    const auto net = netGrams(reading);
    if (!net) return {};
    if (kind != SeriesKind::Ratio) return *net / reading.entry().pieces;
    if (!reading.before || !reading.net || *reading.before <= Decimal{}) return {};
    return reading.net->value() / reading.before->value();
}

DotKind kindOf(const LedgerReading& reading) {
    if (reading.leftOut) return DotKind::LeftOut;
    return reading.suspect ? DotKind::Doubted : DotKind::Counted;
}

void takeDots(SeriesPlot& plot, const BenchSeries& series) {
    for (const LedgerReading& reading : series.readings) {
        if (!reading.supersededBy.empty()) continue;
        const auto value = valueOf(reading, series.key.kind);
        if (!value) continue;
        const DotKind kind = kindOf(reading);
        plot.dots.push_back({*value, static_cast<double>(plot.dots.size() + 1), kind});
        ++(kind == DotKind::LeftOut ? plot.leftOut : plot.counted);
        if (kind == DotKind::Doubted) ++plot.doubted;
    }
}

/// Ends of what has to be seen, without what was left out.
std::pair<double, double> endsOfPlot(const SeriesPlot& plot) {
    std::vector<double> seen;
    for (const PlotDot& dot : plot.dots)
        if (dot.kind != DotKind::LeftOut || plot.counted == 0) seen.push_back(dot.value);
    if (plot.published) seen.push_back(*plot.published);
    if (seen.empty()) return {0, 1};
    // Of few readings the interval may be far wider than they are; its ends need not be seen.
    const auto seenEnds = std::ranges::minmax(seen);
    const double least = seenEnds.min;
    const double most = seenEnds.max;
    const double room = std::max({most - least, std::abs(most) * 0.02, 1e-6});
    std::pair<double, double> ends{least, most};
    if (plot.mean) {
        const auto near = [&](double end) { return std::clamp(end, least - room, most + room); };
        ends.first = std::min(ends.first, near(plot.mean->value - plot.mean->within));
        ends.second = std::max(ends.second, near(plot.mean->value + plot.mean->within));
    }
    return ends;
}

void dropFarOff(SeriesPlot& plot) {
    if (plot.counted == 0) return;
    const auto [low, high] = endsOfPlot(plot);
    const double room = kDrawnWidths * std::max(high - low, 1e-6);
    const auto isFar = [low = low, high = high, room](const PlotDot& dot) {
        return dot.kind == DotKind::LeftOut && (dot.value < low - room || dot.value > high + room);
    };
    for (const PlotDot& dot : plot.dots)
        if (isFar(dot)) plot.beyond.push_back(dot.value);
    std::erase_if(plot.dots, isFar);
}

void setEnds(SeriesPlot& plot) {
    auto [low, high] = endsOfPlot(plot);
    for (const PlotDot& dot : plot.dots) {
        low = std::min(low, dot.value);
        high = std::max(high, dot.value);
    }
    const double air =
        std::max({(high - low) * kAirShare, std::max(std::abs(low), std::abs(high)) * 0.002, 1e-9});
    plot.low = low >= 0 ? std::max(0.0, low - air) : low - air;
    plot.high = high + air;
}

void fillBins(SeriesPlot& plot) {
    plot.bins.assign(kSeriesBins, 0);
    const double width = (plot.high - plot.low) / static_cast<double>(kSeriesBins);
    for (const PlotDot& dot : plot.dots) {
        if (dot.kind == DotKind::LeftOut) continue;
        const auto bin = static_cast<std::size_t>(std::max(0.0, (dot.value - plot.low) / width));
        plot.bins[std::min(bin, kSeriesBins - 1)] += 1;
    }
    const double most = std::ranges::max(plot.bins);
    if (most > 0)
        for (double& bin : plot.bins) bin /= most;
    std::erase_if(plot.dots, [](const PlotDot& dot) { return dot.kind != DotKind::LeftOut; });
    if (plot.dots.size() > kMostDots) plot.dots.resize(kMostDots);
}

/// Of many readings in time, what counts becomes means of so many in a row.
void gatherDots(SeriesPlot& plot) {
    plot.readingsADot = (plot.counted + kMostDots - 1) / kMostDots;
    std::vector<PlotDot> gathered, group;
    const auto close = [&] {
        if (group.empty()) return;
        PlotDot dot;
        for (const PlotDot& each : group) {
            dot.value += each.value / static_cast<double>(group.size());
            dot.level += each.level / static_cast<double>(group.size());
            if (each.kind == DotKind::Doubted) dot.kind = DotKind::Doubted;
        }
        gathered.push_back(dot);
        group.clear();
    };
    for (const PlotDot& dot : plot.dots) {
        if (dot.kind == DotKind::LeftOut) continue;
        group.push_back(dot);
        if (group.size() == plot.readingsADot) close();
    }
    close();
    plot.dots = std::move(gathered);
}

void stackDots(SeriesPlot& plot) {
    std::ranges::stable_sort(plot.dots, {}, &PlotDot::value);
    std::vector<double> values;
    values.reserve(plot.dots.size());
    for (const PlotDot& dot : plot.dots) values.push_back(dot.value);
    const auto rows = stackedRows(values, (plot.high - plot.low) / kDotsAcross);
    int most = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        plot.dots[i].level = rows[i];
        most = std::max(most, rows[i]);
    }
    plot.rows = most + 1;
}

/// So many that the half-width has two digits.
int decimalsFor(const std::optional<ValueWithin>& mean, bool ratio) {
    if (!mean || !(mean->within > 0)) return ratio ? 3 : 1;
    const int digits = 1 - static_cast<int>(std::floor(std::log10(mean->within)));
    return std::clamp(digits, ratio ? 2 : 0, ratio ? 4 : 3);
}

}  // namespace

std::vector<int> stackedRows(const std::vector<double>& sorted, double dotWidth) {
    std::vector<int> rows;
    rows.reserve(sorted.size());
    std::vector<double> lastIn;
    for (const double value : sorted) {
        const auto free =
            std::ranges::find_if(lastIn, [&](double last) { return value - last >= dotWidth; });
        rows.push_back(static_cast<int>(free - lastIn.begin()));
        if (free == lastIn.end())
            lastIn.push_back(value);
        else
            *free = value;
    }
    return rows;
}

SeriesPlot seriesPlotOf(const BenchSeries& series, PlotOrder order) {
    SeriesPlot plot;
    plot.order = order;
    const bool ratio = series.key.kind == SeriesKind::Ratio;
    if (!ratio) plot.unit = QStringLiteral("g");
    if (series.report) plot.mean = series.report->mean;
    if (series.ratio) plot.mean = series.ratio->ratio;
    if (series.published) {
        plot.published = series.published->mean;
        plot.publishedName = QString::fromStdString(series.published->source);
    }
    plot.decimals = decimalsFor(plot.mean, ratio);
    takeDots(plot, series);
    plot.rows = std::max(1.0, static_cast<double>(plot.dots.size()));
    dropFarOff(plot);
    if (order == PlotOrder::InTime) {
        if (plot.dots.size() > kMostDots) gatherDots(plot);
        setEnds(plot);
        return plot;
    }
    setEnds(plot);
    if (plot.dots.size() > kMostDots) fillBins(plot);
    stackDots(plot);
    return plot;
}

QString plotNumber(const SeriesPlot& plot, double value) {
    if (!plot.unit.isEmpty())
        return SeriesPlotWords::tr("%1 %2").arg(
            QString::fromStdString(numberAt(plot.decimals, value)), plot.unit);
    return SeriesPlotWords::tr("%1 %").arg(
        QString::fromStdString(numberAt(std::max(0, plot.decimals - 2), 100 * value)));
}

QString spokenPlot(const SeriesPlot& plot) {
    QStringList parts;
    // Without a translation %n has one form only.
    parts << (plot.counted == 1
                  ? SeriesPlotWords::tr("one reading")
                  : SeriesPlotWords::tr("%n readings", nullptr, static_cast<int>(plot.counted)));
    if (plot.mean) {
        const double low = plot.mean->value - plot.mean->within;
        parts << SeriesPlotWords::tr("mean %1, in 95 % from %2 to %3")
                     .arg(plotNumber(plot, plot.mean->value), plotNumber(plot, low),
                          plotNumber(plot, plot.mean->value + plot.mean->within));
    }
    if (plot.published)
        parts << SeriesPlotWords::tr("%1: %2").arg(plot.publishedName,
                                                   plotNumber(plot, *plot.published));
    if (plot.doubted > 0)
        parts << SeriesPlotWords::tr("%n of a scale in doubt", nullptr,
                                     static_cast<int>(plot.doubted));
    if (plot.leftOut > 0)
        parts << SeriesPlotWords::tr("%n left out", nullptr, static_cast<int>(plot.leftOut));
    return parts.join(QStringLiteral("; "));
}

QString plotNote(const SeriesPlot& plot) {
    QStringList parts;
    if (plot.doubted > 0) parts << SeriesPlotWords::tr("triangle: of a scale in doubt");
    if (plot.readingsADot > 1)
        parts << SeriesPlotWords::tr("each dot is the mean of %n readings in a row", nullptr,
                                     static_cast<int>(plot.readingsADot));
    else if (plot.leftOut > plot.beyond.size())
        parts << SeriesPlotWords::tr("crossed: left out");
    if (!plot.beyond.empty()) {
        QStringList values;
        for (std::size_t i = 0; i < std::min<std::size_t>(plot.beyond.size(), 3); ++i)
            values << plotNumber(plot, plot.beyond[i]);
        if (plot.beyond.size() > 3) values << QStringLiteral("…");
        parts << SeriesPlotWords::tr("left out and too far off to be drawn: %1")
                     .arg(values.join(QStringLiteral(", ")));
    }
    return parts.join(QStringLiteral(" · "));
}

}  // namespace nettare
