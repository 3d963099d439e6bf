#include "app/gui/bench/sample_series.h"

#include <catch2/catch.hpp>

#include "core/ledger/counted_series.h"

namespace nettare {

LedgerReading prawnReading(const char* grams, int pieces) {
    LedgerReading reading;
    LedgerEntry& entry = reading.chained.entry;
    const auto shown = Decimal::read(grams);
    REQUIRE(shown);
    entry.shown = *shown;
    entry.unit = "g";
    entry.readability = Decimal{1, -1};
    entry.pieces = pieces;
    entry.what = "prawn meat";
    entry.series = SeriesMark{SeriesKind::PerPiece, "prawn", {}, {}};
    reading.net = *shown;
    return reading;
}

BenchSeries prawnSeries(const std::vector<const char*>& grams) {
    ReadSeries series;
    series.shown.key = {"prawn meat", SeriesKind::PerPiece, "prawn"};
    for (const char* const each : grams) {
        LedgerReading reading = prawnReading(each);
        reading.chained.entry.id = "reading " + std::to_string(series.shown.readings.size());
        series.shown.counted.push_back(series.shown.readings.size());
        series.shown.readings.push_back(std::move(reading));
    }
    series.numbers = countedSeries(series.shown.readings, series.shown.key, {});
    judge(series);
    return series.shown;
}

}  // namespace nettare
