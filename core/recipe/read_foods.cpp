#include "core/recipe/read_parts.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// "table": numbers keep their leading zeros, so they are text.
TableRow readTableRow(ObjectReader& food) {
    ObjectReader reader = food.object("table");
    TableRow row;
    row.table = reader.id("table");
    row.release = reader.id("release");
    row.number = reader.id("number");
    reader.finish();
    return row;
}

/// "stated": a value of the cook's own, with its reason.
StatedValue readStated(ObjectReader& reader) {
    StatedValue value{};
    value.component = readComponent(reader);
    value.per100g = reader.decimal("per_100g", NumberSign::NotNegative);
    value.within = reader.optionalDecimal("within", NumberSign::NotNegative);
    value.reason = reader.text("reason", kNameLength);
    reader.finish();
    return value;
}

/// "added_sugars": an amount is needed for "stated" and refused for the other kinds.
AddedSugarsEntry readAddedSugars(ObjectReader& food) {
    ObjectReader reader = food.object("added_sugars");
    AddedSugarsEntry added{};
    added.kind = reader.oneOf("kind", kAddedSugarWords);
    if (added.kind == AddedSugarKind::Stated)
        added.per100g = reader.decimal("per_100g", NumberSign::NotNegative);
    added.reason = reader.text("reason", kNameLength);
    reader.finish();
    return added;
}

/// What the food is, as canonical text: its object without id and name, so that two entries of one
/// food are one food.
std::string identityOf(const Json& json) {
    Json bare = Json::object();
    for (const JsonMember& member : *json.members()) {
        const bool* flag = member.value.boolean();  // false says no more than leaving it out
        const bool says = flag == nullptr || *flag;
        if (says && member.key != "id" && member.key != "name") bare.set(member.key, member.value);
    }
    return writeJson(bare);
}

/// One food: composed of table, label and statements, or a kept recipe and nothing else.
FoodEntry readFood(ObjectReader& reader, const Json& json) {
    FoodEntry food;
    food.id = reader.id("id");
    food.name = reader.text("name", kNameLength);
    food.recipe = reader.optionalText("recipe", kNameLength);
    const bool table = reader.has("table");
    const bool label = reader.has("label");
    const bool stated = reader.has("stated");
    if (table) food.table = readTableRow(reader);
    if (label) {
        ObjectReader printed = reader.object("label");
        food.label = readLabel(printed);
    }
    for (const auto& [value, pointer] : reader.items("stated", stated ? 1 : 0, kComponentCount)) {
        ObjectReader entry{value, pointer, reader.failure()};
        food.stated.push_back(readStated(entry));
    }
    const bool qualified = reader.has("added_sugars") || reader.has("plant");
    if (reader.has("added_sugars")) food.addedSugars = readAddedSugars(reader);
    food.plant = reader.optionalFlag("plant");
    reader.finish();
    const bool composed = table || label || stated;
    if (!reader.failure() && (food.recipe ? composed || qualified : !composed)) {
        reader.failure() = Error{ErrorCode::OneOfNeeded}.at(reader.pointer());
        reader.failure()->values.push_back({"known", "table, label, stated; or recipe alone"});
    }
    if (!reader.failure()) food.identity = identityOf(json);
    return food;
}

}  // namespace

void readFoods(ObjectReader& root, RecipeDocument& document) {
    for (const auto& [json, pointer] : root.items("foods", 1, kMostEntries)) {
        ObjectReader reader{json, pointer, root.failure()};
        document.foods.push_back(readFood(reader, json));
    }
}

}  // namespace nettare
