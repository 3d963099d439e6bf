#include <algorithm>

#include "core/recipe/counted_amount.h"
#include "core/recipe/read_parts.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// "series": which one, and whether the line's pieces are among those weighed.
SeriesBinding readBinding(ObjectReader& line) {
    ObjectReader reader = line.object("series");
    SeriesBinding binding;
    binding.series = reader.id("id");
    binding.use = reader.oneOf("use", kUseWords);
    reader.finish();
    return binding;
}

constexpr double kMostGrams = 1e9;

/// What was assumed for another amount of the line counts in proportion. An amount that cannot be
/// read is refused elsewhere. Notes AmountTooLong where the proportion leaves all bounds.
void scaleAssumed(const std::string& now, const std::string& then, RangeRule ranges,
                  ObjectReader& reader, AssumedGrams& assumed) {
    const auto before = readAmount(then);
    const std::string place = reader.pointer() + "/for";
    if (!before && !reader.failure()) reader.failure() = before.error().at(place);
    const auto amount = readAmount(now);
    if (!before || !amount) return;
    const double factor = counted(*amount, ranges).middle() / counted(*before, ranges).middle();
    const double grams = assumed.grams.value() * factor;
    if (grams > 1 / kMostGrams && std::max(grams, assumed.within.value() * factor) < kMostGrams) {
        assumed.grams = Decimal::fromDouble(grams);
        assumed.within = Decimal::fromDouble(assumed.within.value() * factor);
    } else if (!reader.failure()) {
        reader.failure() = Error{ErrorCode::AmountTooLong}.with("found", then).at(place);
    }
}

/// "assumed": never without a half-width and a reason.
AssumedGrams readAssumed(ObjectReader& line, const std::string& amount, RangeRule ranges) {
    ObjectReader reader = line.object("assumed");
    AssumedGrams assumed;
    assumed.grams = reader.decimal("grams", NumberSign::Positive);
    assumed.within = reader.decimal("within", NumberSign::NotNegative);
    assumed.reason = reader.text("reason", kNameLength);
    const auto then = amount.empty() ? std::nullopt : reader.optionalText("for", kAmountLength);
    if (then && !reader.failure()) scaleAssumed(amount, *then, ranges, reader, assumed);
    reader.finish();
    return assumed;
}

/// An amount of a unit: "each", "equals". The unit is a mass or a volume by its symbol.
std::optional<MeasuredAmount> readMeasured(ObjectReader& line, std::string_view key) {
    if (!line.has(key)) return std::nullopt;
    ObjectReader reader = line.object(key);
    MeasuredAmount measured;
    measured.amount = reader.text("amount", kAmountLength);
    measured.unit = readUnitSymbol(reader, "unit");
    reader.finish();
    return measured;
}

/// "yield": by a series, or by a factor with half-width and reason.
std::optional<StateYield> readStateYield(ObjectReader& line) {
    if (!line.has("yield")) return std::nullopt;
    ObjectReader reader = line.object("yield");
    StateYield yield;
    yield.to = reader.oneOf("to", kFoodStateWords);
    static constexpr std::array<std::string_view, 2> kBy{"series", "factor"};
    if (reader.exactlyOneOf(kBy) == 0) {
        yield.series = reader.id("series");
        yield.inverse = reader.optionalFlag("inverse");
    } else {
        yield.factor = reader.decimal("factor", NumberSign::Positive);
        yield.within = reader.decimal("within", NumberSign::NotNegative);
        yield.reason = reader.text("reason", kNameLength);
    }
    reader.finish();
    return yield;
}

std::optional<StatedDensity> readDensity(ObjectReader& line) {
    if (!line.has("density")) return std::nullopt;
    ObjectReader reader = line.object("density");
    StatedDensity density;
    density.gramsPerMl = reader.decimal("g_per_ml", NumberSign::Positive);
    density.within = reader.decimal("within", NumberSign::NotNegative);
    density.reason = reader.text("reason", kNameLength);
    reader.finish();
    return density;
}

/// Amount with its unit or piece word, and what is said of them.
void readAmountOf(ObjectReader& reader, LineEntry& line) {
    line.amount = reader.text("amount", kAmountLength);
    static constexpr std::array<std::string_view, 2> kCounted{"unit", "piece"};
    if (reader.exactlyOneOf(kCounted) == 0)
        line.unit = readUnitSymbol(reader, "unit");
    else
        line.piece = reader.text("piece", kNameLength);
    if (reader.has("fill")) line.fill = reader.oneOf("fill", kFillWords);
    line.each = readMeasured(reader, "each");
    line.equals = readMeasured(reader, "equals");
    line.size = reader.optionalText("size", kNameLength).value_or("");
    line.asPurchased = reader.optionalFlag("as_purchased");
    line.weighedFor = reader.optionalText("weighed_for", kAmountLength);
    if (reader.has("series")) line.series = readBinding(reader);
    line.density = readDensity(reader);
    if (reader.has("way")) line.way = reader.oneOf("way", kWayWords);
}

/// "to_taste": nothing is written of an amount; what was weighed or assumed counts all the same.
void readToTaste(ObjectReader& reader, LineEntry& line) {
    line.toTaste = true;
    if (!reader.optionalFlag("to_taste") && !reader.failure())
        reader.failure() = Error{ErrorCode::NotOneOf}
                               .with("found", "false")
                               .with("known", "true")
                               .at(reader.pointer() + "/to_taste");
}

/// One line. A unit is a symbol of ours, a piece any word; the ways it opens may all stand side by
/// side.
LineEntry readLine(ObjectReader& reader, RangeRule ranges) {
    LineEntry line;
    line.id = reader.id("id");
    if (reader.has("to_taste"))
        readToTaste(reader, line);
    else
        readAmountOf(reader, line);
    line.food = reader.id("food");
    line.written = reader.optionalText("written", kProseLength).value_or("");
    line.optional = reader.optionalFlag("optional");
    line.preparation = reader.optionalText("preparation", kNameLength).value_or("");
    if (reader.has("state")) line.state = reader.oneOf("state", kFoodStateWords);
    line.weighed = reader.optionalIds("weighed", kMostEntries);
    line.trim = reader.optionalId("trim");
    line.yield = readStateYield(reader);
    if (reader.has("assumed")) line.assumed = readAssumed(reader, line.amount, ranges);
    reader.finish();
    return line;
}

}  // namespace

void readLines(ObjectReader& root, RecipeDocument& document) {
    for (const auto& [json, pointer] : root.items("lines", 1, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        document.lines.push_back(readLine(reader, document.counting.ranges));
    }
}

}  // namespace nettare
