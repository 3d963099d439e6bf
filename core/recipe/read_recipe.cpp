#include "core/recipe/read_recipe.h"

#include "core/recipe/read_parts.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// Format and version first: a foreign or newer document is refused as that, not by its first odd
/// key.
void readForm(ObjectReader& root, const Json& json) {
    const std::string format = root.text("format", kAmountLength);
    const bool versionIsThere = root.has("version");
    if (root.failure()) return;
    const Json* version = json.find("version");
    const double* number = versionIsThere ? version->number() : nullptr;
    if (format != kRecipeFormat)
        root.failure() = Error{ErrorCode::WrongFormat}
                             .with("found", format)
                             .with("wanted", "a recipe document")
                             .with("known", kRecipeFormat)
                             .at("/format");
    else if (!versionIsThere)
        root.failure() = Error{ErrorCode::MissingKey}.with("key", "version");
    else if (number == nullptr)
        root.failure() = Error{ErrorCode::WrongKind}
                             .with("wanted", "a number")
                             .with("found", kindOf(*version))
                             .at("/version");
    else if (*number != kRecipeVersion)
        root.failure() = Error{ErrorCode::NewerFormat}
                             .with("found", numberText(*number))
                             .with("known", std::to_string(kRecipeVersion))
                             .at("/version");
}

/// What the batch makes and what one eater gets.
void readYield(ObjectReader& root, RecipeDocument& document) {
    ObjectReader makes = root.object("makes");
    document.pieces = makes.text("pieces", kAmountLength);
    document.pieceWord = makes.text("piece", kNameLength);
    document.piecesWord = makes.text("plural", kNameLength);
    document.piecesWeighed = makes.optionalId("weighed");
    makes.finish();
    ObjectReader portion = root.object("portion");
    static constexpr std::array<std::string_view, 2> kPortions{"pieces", "grams"};
    if (portion.exactlyOneOf(kPortions) == 0)
        document.portionPieces = portion.text("pieces", kAmountLength);
    else
        document.portionGrams = portion.decimal("grams", NumberSign::Positive);
    portion.finish();
}

/// Ceilings and floors, one end each: a band is two targets.
void readTargets(ObjectReader& root, RecipeDocument& document) {
    for (const auto& [json, pointer] : root.items("targets", 0, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        TargetEntry target{};
        target.component = readComponent(reader);
        target.per = reader.oneOf("per", kBasisWords);
        static constexpr std::array<std::string_view, 2> kEnds{"at_most", "at_least"};
        if (reader.exactlyOneOf(kEnds) == 0)
            target.atMost = reader.decimal("at_most", NumberSign::Positive);
        else
            target.atLeast = reader.decimal("at_least", NumberSign::Positive);
        reader.finish();
        document.targets.push_back(target);
    }
}

/// What is not given keeps its default; a given zero is a statement and stays zero.
void readAssumptions(ObjectReader& root, RecipeDocument& document) {
    if (!root.has("assumptions")) return;
    ObjectReader reader = root.object("assumptions");
    Assumptions& all = document.assumptions;
    const auto take = [&](std::string_view key, NumberSign sign, Decimal& into) {
        if (const auto value = reader.optionalDecimal(key, sign)) into = *value;
    };
    take("piece_spread", NumberSign::NotNegative, all.pieceSpread);
    take("volume_spread", NumberSign::NotNegative, all.volumeSpread);
    take("spread_freedom", NumberSign::Positive, all.spreadFreedom);
    take("declaration_spread", NumberSign::NotNegative, all.declarationSpread);
    all.compositionSpread = reader.optionalDecimal("composition_spread", NumberSign::NotNegative);
    reader.finish();
}

/// What is left out keeps its default.
void readCounting(ObjectReader& root, RecipeDocument& document) {
    if (!root.has("counting")) return;
    ObjectReader reader = root.object("counting");
    Counting& counting = document.counting;
    if (reader.has("to_taste")) counting.toTaste = reader.oneOf("to_taste", kToTasteWords);
    if (reader.has("optional")) counting.optional = reader.oneOf("optional", kOptionalWords);
    if (reader.has("ranges")) counting.ranges = reader.oneOf("ranges", kRangeWords);
    if (reader.has("makes")) counting.makes = reader.oneOf("makes", kRangeWords);
    reader.finish();
}

/// The method, for people; nothing is computed from it.
void readSteps(ObjectReader& root, RecipeDocument& document) {
    for (const auto& [json, pointer] : root.items("steps", 0, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        document.steps.push_back({reader.text("text", kProseLength)});
        reader.finish();
    }
}

}  // namespace

std::string readUnitSymbol(ObjectReader& reader, std::string_view key) {
    std::string symbol = reader.text(key, kAmountLength);
    std::string known;
    for (const std::string_view unit : kUnitSymbols) {
        if (unit == symbol) return symbol;
        (known += known.empty() ? "" : ", ") += unit;
    }
    if (!reader.failure()) {
        reader.failure() = Error{ErrorCode::UnknownUnit}
                               .with("found", symbol)
                               .at(pointerTo(reader.pointer(), key));
        reader.failure()->values.push_back({"known", known});
    }
    return symbol;
}

Component readComponent(ObjectReader& reader) {
    const std::string tagname = reader.text("component", kAmountLength);
    const auto component = componentNamed(tagname);
    if (!component && !reader.failure())
        reader.failure() = Error{ErrorCode::ComponentUnknown}
                               .with("found", tagname)
                               .at(pointerTo(reader.pointer(), "component"));
    return component.value_or(Component::WATER);
}

Result<RecipeDocument> readRecipe(const Json& json) {
    std::optional<Error> failure;
    ObjectReader root{json, "", failure};
    RecipeDocument document;
    readForm(root, json);
    document.title = root.text("title", kNameLength);
    document.note = root.optionalText("note", kProseLength).value_or("");
    document.measures = root.oneOf("measures", kSystemWords);
    readYield(root, document);
    readWeighing(root, document);
    readFoods(root, document);
    readCounting(root, document);
    readLines(root, document);
    readResidues(root, document);
    readSteps(root, document);
    readTargets(root, document);
    readAssumptions(root, document);
    root.finish();
    if (failure) return fail(*failure);
    return document;
}

Result<RecipeDocument> readRecipeText(std::string_view text) {
    const auto json = parseJson(text);
    if (!json) return fail(json.error());
    return readRecipe(*json);
}

}  // namespace nettare
