#include "core/edit/written_line.h"

#include <algorithm>

#include "core/edit/line_parts.h"
#include "core/food/piece_word.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// As typed where documents read it so, else in plain fractions: "a dozen" is 12.
std::string amountText(const Amount& amount) {
    const auto read = readAmount(amount.text());
    if (read && read->low() == amount.low() && read->high() == amount.high()) return amount.text();
    const std::string low = writeFraction(amount.low());
    return amount.isRange() ? low + "-" + writeFraction(amount.high()) : low;
}

Error askedUnit(const std::vector<std::string_view>& units) {
    std::string known;
    for (const std::string_view unit : units) (known += known.empty() ? "" : " or ") += unit;
    return Error{ErrorCode::UnitAsked}.with("found", units.front()).with("known", known);
}

Error askedNumber(const AskedAmount& asked) {
    return Error{ErrorCode::AmountAmbiguous}
        .with("found", asked.decimal.text())
        .with("decimal", writeFraction(asked.decimal.low()))
        .with("grouped", writeFraction(asked.grouped.low()));
}

/// What the reading leaves open for the cook to say.
std::optional<Error> openQuestion(const LineReading& reading) {
    if (reading.amountAsked) return askedNumber(*reading.amountAsked);
    if (reading.units.size() > 1) return askedUnit(reading.units);
    if (reading.each.empty()) return std::nullopt;
    const LineMeasure& each = reading.each.front();
    if (each.asked) return askedNumber(*each.asked);
    if (each.units.size() > 1) return askedUnit(each.units);
    return std::nullopt;
}

std::optional<Json> measuredJson(const LineMeasure& measure) {
    if (!measure.amount || measure.units.size() != 1) return std::nullopt;
    if (std::ranges::find(kUnitSymbols, measure.units.front()) == kUnitSymbols.end())
        return std::nullopt;
    Json json = Json::object();
    json.set("amount", Json{amountText(*measure.amount)});
    return json.set("unit", Json{measure.units.front()});
}

/// What the line counts. Butter the size of a walnut is a piece of it.
std::string pieceOf(const LineReading& reading, const std::string& foodName) {
    if (!reading.piece.empty()) return reading.piece;
    return reading.amount ? ownPiece(foodName) : "piece";
}

/// The first of the measures that has a unit which documents know.
void setFirst(std::string_view key, const std::vector<LineMeasure>& measures, Json& line) {
    for (const LineMeasure& measure : measures)
        if (auto json = measuredJson(measure)) {
            line.set(key, std::move(*json));
            return;
        }
}

/// A kept recipe without a unit is used in batches, or in its own pieces.
void setAmountOfRecipe(const LineReading& reading, Json& line) {
    line.set("amount", Json{reading.amount ? amountText(*reading.amount) : "1"});
    if (!reading.units.empty())
        line.set("unit", Json{reading.units.front()});
    else
        line.set("piece", Json{reading.piece.empty() ? "batch" : reading.piece});
}

void setAmount(const LineReading& reading, const std::string& foodName, Json& line) {
    if (!reading.amount && reading.size.empty()) {
        line.set("to_taste", Json{true});
        return;
    }
    line.set("amount", Json{reading.amount ? amountText(*reading.amount) : "1"});
    if (!reading.units.empty())
        line.set("unit", Json{reading.units.front()});
    else
        line.set("piece", Json{pieceOf(reading, foodName)});
    if (!reading.size.empty()) line.set("size", Json{reading.size});
    if (!reading.fill.empty()) line.set("fill", Json{reading.fill});
    setFirst("each", reading.each, line);
    setFirst("equals", reading.equals, line);
}

bool isRecipe(const Json& document, const FoodChoice& choice) {
    if (choice.existing.empty()) return !choice.recipe.empty();
    const auto food = entryNamed(document, "foods", choice.existing);
    return food && (*food)->find("recipe") != nullptr;
}

std::string preparationText(const LineReading& reading) {
    if (reading.alternative.empty()) return reading.preparation;
    const std::string other = "or " + reading.alternative;
    return reading.preparation.empty() ? other : reading.preparation + ", " + other;
}

}  // namespace

Result<LineEdit> addWrittenLine(const Json& document, std::size_t at, const LineReading& reading,
                                const FoodChoice& choice) {
    if (at > itemsOf(document, "lines").size())
        return fail(Error{ErrorCode::EditDoesNotFit}.at(pointerTo("/lines", at)));
    if (const auto question = openQuestion(reading)) return fail(*question);
    std::string name = choice.name;
    if (const auto food = entryNamed(document, "foods", choice.existing))
        name = textAt(**food, "name");
    EditDraft draft{document, EditKind::AddLine, name};
    const auto food = foodFor(document, choice, draft);
    if (!food) return fail(food.error());
    const std::string id = freshId(document, "lines", name);
    Json line = Json::object();
    line.set("id", Json{id}).set("food", Json{*food});
    line.set("written", Json{trimmed(reading.text)});
    if (isRecipe(document, choice))
        setAmountOfRecipe(reading, line);
    else
        setAmount(reading, name, line);
    if (reading.optional) line.set("optional", Json{true});
    if (const std::string preparation = preparationText(reading); !preparation.empty())
        line.set("preparation", Json{preparation});
    draft.insert("/lines", at, std::move(line));
    auto edit = draft.takeChecked();
    if (!edit) return fail(edit.error());
    return LineEdit{std::move(*edit), id, {}};
}

}  // namespace nettare
