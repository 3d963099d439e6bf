#include <algorithm>

#include "core/recipe/read_parts.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// When it was weighed, with the offset of the kitchen's clock; order is the list's, never the
/// clock's.
std::string readTime(ObjectReader& reader) {
    return reader.has("at") ? reader.time("at") : std::string{};
}

/// Scales first, then the vessels that were weighed on them.
void readScales(ObjectReader& root, RecipeDocument& document) {
    for (const auto& [json, pointer] : root.items("scales", 0, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        ScaleEntry scale;
        scale.id = reader.id("id");
        scale.name = reader.text("name", kNameLength);
        scale.unit = readUnitSymbol(reader, "unit");
        scale.readability = reader.decimal("readability", NumberSign::Positive);
        scale.calibration = reader.optionalDecimal("calibration", NumberSign::NotNegative);
        reader.finish();
        document.scales.push_back(scale);
    }
    for (const auto& [json, pointer] : root.items("vessels", 0, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        VesselEntry vessel;
        vessel.id = reader.id("id");
        vessel.name = reader.text("name", kNameLength);
        vessel.scale = reader.id("scale");
        vessel.tare = reader.decimal("tare", NumberSign::NotNegative);
        reader.finish();
        document.vessels.push_back(vessel);
    }
}

/// What scales showed, and the differences that are readings.
void readReadings(ObjectReader& root, RecipeDocument& document) {
    for (const auto& [json, pointer] : root.items("indications", 0, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        IndicationEntry indication;
        indication.id = reader.id("id");
        indication.scale = reader.id("scale");
        indication.shown = reader.decimal("shown", NumberSign::Any);
        indication.state = reader.oneOf("state", kStateWords);
        indication.at = readTime(reader);
        reader.finish();
        document.indications.push_back(indication);
    }
    for (const auto& [json, pointer] : root.items("readings", 0, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        ReadingEntry reading;
        reading.id = reader.id("id");
        reading.gross = reader.id("gross");
        static constexpr std::array<std::string_view, 2> kTares{"tare", "vessel"};
        reader.exactlyOneOf(kTares);
        reading.tare = reader.optionalId("tare");
        reading.vessel = reader.optionalId("vessel");
        if (reader.has("pieces")) reading.pieces = readWholeText(reader, "pieces");
        reader.finish();
        document.readings.push_back(reading);
    }
}

/// "tags", in whatever order, each once.
std::vector<std::string> readTags(ObjectReader& reader) {
    std::vector<std::string> tags = reader.texts("tags", kMostTags, kNameLength);
    std::ranges::sort(tags);
    const auto twice = std::ranges::adjacent_find(tags);
    if (!reader.failure() && twice != tags.end())
        reader.failure() = Error{ErrorCode::TagsNotSorted}
                               .with("found", *twice)
                               .at(pointerTo(reader.pointer(), "tags"));
    return tags;
}

/// "bench": what the ledger calls the series.
BenchEntry readBench(ObjectReader reader, SeriesKind kind) {
    BenchEntry bench;
    bench.what = reader.text("what", kNameLength);
    if (kind == SeriesKind::Ratio) bench.of = reader.text("of", kNameLength);
    if (reader.has("tags")) bench.tags = readTags(reader);
    reader.finish();
    return bench;
}

/// "pooled_with": the spread of an earlier series.
EarlierEntry readEarlier(ObjectReader reader) {
    EarlierEntry earlier;
    earlier.name = reader.text("name", kNameLength);
    earlier.spread = reader.decimal("s", NumberSign::Positive);
    earlier.freedom = reader.decimal("nu", NumberSign::Positive);
    reader.finish();
    return earlier;
}

/// Ratios come in pairs, all other series in single readings.
void readSeries(ObjectReader& root, RecipeDocument& document) {
    for (const auto& [json, pointer] : root.items("series", 0, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        SeriesEntry series;
        series.id = reader.id("id");
        series.name = reader.text("name", kNameLength);
        series.kind = reader.oneOf("kind", kSeriesWords);
        if (series.kind == SeriesKind::Ratio) {
            for (const auto& [pair, place] : reader.items("pairs", 1, kMostEntries)) {
                ObjectReader both{pair, place, root.failure()};
                series.pairs.push_back({both.id("before"), both.id("after")});
                both.finish();
            }
        } else {
            series.of = reader.text("of", kNameLength);
            series.readings = reader.ids("readings", kMostEntries);
        }
        series.pooled = reader.optionalFlag("pooled");
        if (reader.has("pooled_with")) series.earlier = readEarlier(reader.object("pooled_with"));
        if (reader.has("bench")) series.bench = readBench(reader.object("bench"), series.kind);
        reader.finish();
        document.series.push_back(series);
    }
}

}  // namespace

int readWholeText(ObjectReader& reader, std::string_view key) {
    const std::string text = reader.text(key, kAmountLength);
    if (reader.failure()) return 1;
    const bool whole = text.size() <= 4 &&
                       text.find_first_not_of("0123456789") == std::string::npos &&
                       text.front() != '0';
    if (!whole)
        reader.failure() = Error{ErrorCode::OutOfRange}
                               .with("found", text)
                               .with("low", "1")
                               .with("high", "9999")
                               .at(pointerTo(reader.pointer(), key));
    return whole ? static_cast<int>(Decimal::read(text)->coefficient()) : 1;
}

void readWeighing(ObjectReader& root, RecipeDocument& document) {
    readScales(root, document);
    readReadings(root, document);
    readSeries(root, document);
}

}  // namespace nettare
