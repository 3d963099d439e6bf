#include "core/publish/series_text.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "core/food/piece_word.h"
#include "core/nutrition/student_t.h"
#include "core/publish/against_table_text.h"
#include "core/publish/measure_text.h"
#include "core/publish/number_text.h"
#include "core/publish/within_text.h"

namespace nettare {

namespace {

/// Short symbols stay as they are for several.
std::string severalOf(const std::string& word) {
    static constexpr std::array<std::string_view, 5> kSymbols{"tbsp", "tsp", "ml", "l", "fl oz"};
    return std::ranges::find(kSymbols, word) == kSymbols.end() ? pluralOf(word) : word;
}

/// What one of the series is: "prawn" says it alone, "piece" and "cup" need the food.
std::string subject(const SeriesKey& key, const std::string& counted) {
    const bool needsFood = key.kind == SeriesKind::PerMeasure || key.of == "piece";
    return needsFood ? fmt::format("{} of {}", counted, key.what) : counted;
}

std::string readingCount(int readings, int pieces) {
    std::string text = fmt::format("{} {}", readings, readings == 1 ? "reading" : "readings");
    if (pieces != readings) text += fmt::format(" of {} pieces", pieces);
    return text;
}

std::string_view spreadWord(SpreadBasis basis) {
    if (basis == SpreadBasis::Assumed) return ", assumed";
    return basis == SpreadBasis::Pooled ? ", pooled" : "";
}

std::string summaryText(const SeriesReport& report) {
    const PieceStatistics& series = report.statistics;
    const int decimals = decimalsOfSpread(series.spread);
    return fmt::format("{} · mean {} g · s {} g{}", readingCount(series.readings, series.pieces),
                       numberAt(decimals, series.mean), numberAt(decimals, series.spread),
                       spreadWord(report.basis));
}

/// How well a spread of two or three readings is known.
std::string fewText(int readings) {
    const std::string known =
        readings == 2 ? "With two readings the spread is hardly known, and the interval is 12.7 "
                        "standard uncertainties wide to each side; weigh two more"
                      : "With three readings the interval is 4.3 standard uncertainties wide to "
                        "each side; weigh one more";
    return known + ", or pool with an earlier or the usual spread.";
}

/// A spread in grams, of ratios as a share of what went in.
std::string gramsOfSpread(double grams) {
    return numberAt(decimalsOfSpread(grams), grams) + " g";
}
std::string shareOfSpread(double share) {
    return numberAt(decimalsOfSpread(100 * share), 100 * share) + " %";
}

/// With what a spread is pooled, and what both know together.
std::string pooledText(const std::string& spread, const std::string& earlierSpread, int readings,
                       double freedom, const SeriesQuestion& question) {
    if (!question.earlier)
        return fmt::format(
            "The spread of {} is pooled with the usual one of {} ({} degrees of freedom).", spread,
            earlierSpread, shortNumber(freedom));
    const EarlierSpread& earlier = *question.earlier;
    const std::string of =
        fmt::format("{} ({}, s {})", earlier.name, readingCount(earlier.readings, earlier.readings),
                    earlierSpread);
    if (readings == 1)
        return fmt::format("One reading shows no spread; that of {} stands for it.", of);
    return fmt::format("The spread of {} is pooled with that of {}; {} degrees of freedom.", spread,
                       of, shortNumber(freedom));
}

std::string spreadText(const SeriesReport& report, const SeriesQuestion& question) {
    const PieceStatistics& series = report.statistics;
    switch (report.basis) {
        case SpreadBasis::Assumed:
            return fmt::format(
                "One reading shows no spread, {} is assumed; from four readings on the spread is "
                "their own.",
                percent(series.spread / series.mean));
        case SpreadBasis::FewOwn:
            return fewText(series.readings);
        case SpreadBasis::Pooled:
            return pooledText(gramsOfSpread(series.spread),
                              question.earlier ? gramsOfSpread(question.earlier->known.spread)
                                               : percent(question.assumed.relative),
                              series.readings, series.freedom, question);
        case SpreadBasis::Own:
            break;
    }
    return {};
}

std::string ratioSpreadText(const RatioReport& report, const SeriesQuestion& question) {
    const RatioStatistics& series = report.statistics;
    switch (report.basis) {
        case SpreadBasis::Assumed:
            return "One reading shows no spread; the lost share is assumed to vary as pieces do. "
                   "From four readings on the spread is their own.";
        case SpreadBasis::FewOwn:
            return fewText(series.readings);
        case SpreadBasis::Pooled:
            return pooledText(
                shareOfSpread(series.residualSpread / series.meanBefore),
                shareOfSpread(question.earlier ? question.earlier->known.spread
                                               : assumedBeside(series, question.assumed).spread),
                series.readings, series.freedom, question);
        case SpreadBasis::Own:
            break;
    }
    return {};
}

std::string othersWord(double count) {
    return fmt::format("{} {}", countInWords(count), count == 1 ? "other" : "others");
}

/// The floor with as many digits as show that it is more than what was wanted.
std::string floorText(double floor, double wanted) {
    int decimals = decimalsOfWithin(floor);
    while (decimals < 4 &&
           steppedTo(Decimal::fromDouble(floor), Decimal{1, -decimals}, Direction::Floor).value() <=
               wanted)
        ++decimals;
    return numberAt(decimals, floor, Direction::Floor);
}

std::string moreWeighings(const SeriesReport& report, double count, double wanted) {
    const std::string within = shortNumber(wanted);
    const std::string others = othersWord(count);
    if (report.noneSuffices)
        return fmt::format(
            "No number of weighings is enough for ± {} g: {} scatter by ± {} g "
            "themselves.",
            within, others, floorText(report.floorWithin, wanted));
    if (!report.more)
        return fmt::format("It would take more than a thousand weighings to bring {} to ± {} g.",
                           others, within);
    if (*report.more == 0)
        return fmt::format("{} are known to ± {} g already.", capitalised(others), within);
    return fmt::format("{} more {} to ± {} g.", *report.more,
                       *report.more == 1 ? fmt::format("weighing brings {}", others)
                                         : fmt::format("weighings bring {}", others),
                       within);
}

/// With the 95 % half-width of the slope; where nothing scatters about the line, it has none.
std::string driftRate(const Drift& drift) {
    const double rate = std::fabs(drift.perReading);
    if (drift.t == 0) return shortNumber(rate);
    return withinText({rate, coverageFactor(drift.freedom) * rate / std::fabs(drift.t)});
}

std::string driftText(const Drift& drift) {
    if (!drift.significant) return {};
    return fmt::format(
        "From reading to reading they grow {} by {} g ({} degrees of freedom); see "
        "whether size, season or supplier has changed, and tag the readings by it.",
        drift.perReading < 0 ? "lighter" : "heavier", driftRate(drift), shortNumber(drift.freedom));
}

ValueWithin inPercent(const ValueWithin& ratio) {
    return {100 * ratio.value, 100 * ratio.within};
}

}  // namespace

std::string seriesPlural(const SeriesKey& key) {
    return subject(key, severalOf(key.of));
}

SeriesTexts seriesTexts(const SeriesKey& key, const SeriesReport& report,
                        const SeriesQuestion& question) {
    SeriesTexts texts;
    texts.summary = summaryText(report);
    texts.next = fmt::format("One more {} will weigh {} g (95 %).", subject(key, key.of),
                             rangeText(report.next));
    texts.spread = spreadText(report, question);
    if (report.others && question.others) {
        texts.others = fmt::format("{}: {} g.", capitalised(othersWord(*question.others)),
                                   withinText(*report.others));
        if (question.wanted) texts.more = moreWeighings(report, *question.others, *question.wanted);
    }
    if (report.against && question.published)
        texts.against = againstTableText(key, report, *question.published);
    if (report.drift) texts.drift = driftText(*report.drift);
    return texts;
}

SeriesTexts ratioTexts(const SeriesKey& key, const RatioReport& report,
                       const SeriesQuestion& question) {
    SeriesTexts texts;
    texts.summary = fmt::format(
        "{} · {} {} %{}", readingCount(report.statistics.readings, report.statistics.readings),
        key.of, withinText(inPercent(report.ratio)),
        report.basis == SpreadBasis::Pooled ? spreadWord(report.basis) : "");
    if (report.next)
        texts.next = fmt::format("One more lot of {} g will give {} % (95 %).",
                                 shortNumber(report.statistics.meanBefore),
                                 rangeText(inPercent(*report.next)));
    texts.spread = ratioSpreadText(report, question);
    return texts;
}

std::string outlierQuestion(std::string_view reading) {
    return fmt::format(
        "Is {} as weighed? It lies further from the others than chance explains (one in twenty). "
        "Leave it out only for a cause that you know.",
        reading);
}

}  // namespace nettare
