#pragma once

#include <string>
#include <string_view>

#include "core/ledger/ledger_reading.h"
#include "core/weighing/series_report.h"

namespace nettare {

/// What a yield series says, a sentence or more each; empty where there is nothing to say. Ends of
/// intervals round away from their middle; half-widths have one significant digit, two where it
/// would be a 1.
struct SeriesTexts {
    std::string summary;  ///< "6 readings · mean 9.82 g · s 0.17 g"
    std::string next;     ///< "One more prawn will weigh 9.3 to 10.3 g (95 %)."
    std::string others;   ///< "Thirty-six others: 353 ± 7 g."
    std::string spread;   ///< why the interval is wide, and what narrows it
    std::string against;  ///< how it stands to the published mean
    std::string more;     ///< how many more weighings bring the wanted half-width, or that none do
    std::string drift;    ///< where there is one
};

/// Of a series of pieces or measures; `question` is the one that the report answers.
[[nodiscard]] SeriesTexts seriesTexts(const SeriesKey& key, const SeriesReport& report,
                                      const SeriesQuestion& question);

/// Of a ratio series, likewise.
[[nodiscard]] SeriesTexts ratioTexts(const SeriesKey& key, const RatioReport& report,
                                     const SeriesQuestion& question);

/// Asks about an odd reading, named as it is listed: "14 g".
[[nodiscard]] std::string outlierQuestion(std::string_view reading);

/// "prawns", "pieces of squid", "cups of blueberries".
[[nodiscard]] std::string seriesPlural(const SeriesKey& key);

}  // namespace nettare
