#include <algorithm>

#include "core/quantity/amount.h"
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
void scaleAssumed(const std::string& now, const std::string& then, ObjectReader& reader,
                  AssumedGrams& assumed) {
    const auto before = readAmount(then);
    const std::string place = reader.pointer() + "/for";
    if (!before && !reader.failure()) reader.failure() = before.error().at(place);
    const auto amount = readAmount(now);
    if (!before || !amount) return;
    const double factor = amount->middle() / before->middle();
    const double grams = assumed.grams.value() * factor;
    if (grams > 1 / kMostGrams && std::max(grams, assumed.within.value() * factor) < kMostGrams) {
        assumed.grams = Decimal::fromDouble(grams);
        assumed.within = Decimal::fromDouble(assumed.within.value() * factor);
    } else if (!reader.failure()) {
        reader.failure() = Error{ErrorCode::AmountTooLong}.with("found", then).at(place);
    }
}

/// "assumed": never without a half-width and a reason.
AssumedGrams readAssumed(ObjectReader& line, const std::string& amount) {
    ObjectReader reader = line.object("assumed");
    AssumedGrams assumed;
    assumed.grams = reader.decimal("grams", Sign::Positive);
    assumed.within = reader.decimal("within", Sign::NotNegative);
    assumed.reason = reader.text("reason", kNameLength);
    const auto then = reader.optionalText("for", kAmountLength);
    if (then && !reader.failure()) scaleAssumed(amount, *then, reader, assumed);
    reader.finish();
    return assumed;
}

/// One line. A unit is a symbol of ours, a piece any word; the ways it opens may all stand side by
/// side.
LineEntry readLine(ObjectReader& reader) {
    LineEntry line;
    line.id = reader.id("id");
    line.amount = reader.text("amount", kAmountLength);
    static constexpr std::array<std::string_view, 2> kUnits{"unit", "piece"};
    if (reader.exactlyOneOf(kUnits) == 0)
        line.unit = readUnitSymbol(reader, "unit");
    else
        line.piece = reader.text("piece", kNameLength);
    line.food = reader.id("food");
    line.preparation = reader.optionalText("preparation", kNameLength).value_or("");
    line.size = reader.optionalText("size", kNameLength).value_or("");
    line.asPurchased = reader.optionalFlag("as_purchased");
    line.weighed = reader.optionalIds("weighed", kMostEntries);
    line.weighedFor = reader.optionalText("weighed_for", kAmountLength);
    if (reader.has("series")) line.series = readBinding(reader);
    line.trim = reader.optionalId("trim");
    if (reader.has("assumed")) line.assumed = readAssumed(reader, line.amount);
    if (reader.has("way")) line.way = reader.oneOf("way", kWayWords);
    reader.finish();
    return line;
}

/// The key that is there says what the residue is: line, mixture, drip or unknown.
void readResidues(ObjectReader& root, RecipeDocument& document) {
    for (const auto& [json, pointer] : root.items("residues", 0, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        ResidueEntry residue{};
        static constexpr std::array<std::string_view, 4> kKinds{"line", "mixture", "drip",
                                                                "unknown"};
        switch (reader.exactlyOneOf(kKinds)) {
            case 0:
                residue.kind = ResidueKind::Line;
                residue.lines = {reader.id("line")};
                break;
            case 1:
                residue.kind = ResidueKind::Mixture;
                residue.lines = reader.ids("mixture", kMostEntries);
                break;
            case 2:
                residue.kind = ResidueKind::Drip;
                residue.food = reader.id("drip");
                break;
            default:
                residue.kind = ResidueKind::Unknown;
                if (!reader.optionalFlag("unknown") && !reader.failure())
                    reader.failure() = Error{ErrorCode::NotOneOf}
                                           .with("found", "false")
                                           .with("known", "true")
                                           .at(reader.pointer() + "/unknown");
        }
        residue.readings = reader.ids("readings", kMostEntries);
        reader.finish();
        document.residues.push_back(residue);
    }
}

/// The dish after cooking; what is not eaten of it is weighed apart.
void readCooked(ObjectReader& root, RecipeDocument& document) {
    if (!root.has("cooked")) return;
    ObjectReader reader = root.object("cooked");
    CookedEntry cooked;
    cooked.readings = reader.ids("readings", kMostEntries);
    cooked.notEaten = reader.optionalIds("not_eaten", kMostEntries);
    reader.finish();
    document.cooked = cooked;
}

}  // namespace

void readLines(ObjectReader& root, RecipeDocument& document) {
    for (const auto& [json, pointer] : root.items("lines", 1, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        document.lines.push_back(readLine(reader));
    }
    readResidues(root, document);
    readCooked(root, document);
}

}  // namespace nettare
