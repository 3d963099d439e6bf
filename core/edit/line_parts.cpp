#include "core/edit/line_parts.h"

#include <algorithm>
#include <array>

#include "core/edit/place.h"
#include "core/food/piece_word.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// "size" picks one of the food's measures, so it goes with them.
constexpr std::array<std::string_view, 14> kBindings{
    "weighed", "weighed_for", "series", "trim",  "assumed", "way",   "size",
    "fill",    "each",        "equals", "yield", "density", "state", "written"};

bool isRow(const Json& food, const TableRow& row) {
    const Json* table = food.find("table");
    return table != nullptr && textAt(*table, "table") == row.table &&
           textAt(*table, "release") == row.release && textAt(*table, "number") == row.number;
}

Json foodEntry(const std::string& id, const FoodChoice& choice) {
    if (!choice.recipe.empty()) {
        Json food = Json::object();
        food.set("id", Json{id}).set("name", Json{choice.name});
        return food.set("recipe", Json{choice.recipe});
    }
    Json food = Json::object();
    food.set("id", Json{id}).set("name", Json{choice.name});
    return food.set("table", rowJson(choice.row));
}

}  // namespace

Json rowJson(const TableRow& row) {
    Json table = Json::object();
    table.set("table", Json{row.table}).set("release", Json{row.release});
    return table.set("number", Json{row.number});
}

std::string linePlace(std::string_view line, std::string_view member) {
    std::string place = pointerTo("/lines", line);
    return member.empty() ? place : pointerTo(place, member);
}

std::vector<std::string> unbind(const Json& line, EditDraft& draft,
                                std::initializer_list<std::string_view> but) {
    std::vector<std::string> unbound;
    for (const std::string_view key : kBindings) {
        if (line.find(key) == nullptr || std::ranges::find(but, key) != but.end()) continue;
        draft.set(linePlace(textAt(line, "id"), key), std::nullopt);
        if (key != "weighed_for" && key != "written") unbound.emplace_back(key);
    }
    return unbound;
}

Result<std::string> foodFor(const Json& document, const FoodChoice& choice, EditDraft& draft) {
    if (!choice.existing.empty()) {
        const auto food = entryNamed(document, "foods", choice.existing);
        if (!food) return fail(food.error());
        return choice.existing;
    }
    for (const Json& food : itemsOf(document, "foods"))
        if (choice.recipe.empty() ? isRow(food, choice.row)
                                  : textAt(food, "recipe") == choice.recipe)
            return std::string{textAt(food, "id")};
    std::string id = freshId(document, "foods", choice.name);
    draft.append("/foods", foodEntry(id, choice));
    return id;
}

std::string ownPiece(std::string_view foodName) {
    return singularOf(trimmed(foodName.substr(0, foodName.find(','))));
}

void dropFoodOf(const Json& document, const Json& line, EditDraft& draft) {
    const std::string_view food = textAt(line, "food");
    const auto usedBy = [&](std::string_view list, std::string_view key) {
        return std::ranges::count_if(itemsOf(document, list),
                                     [&](const Json& entry) { return textAt(entry, key) == food; });
    };
    if (usedBy("lines", "food") > 1 || usedBy("residues", "drip") > 0) return;
    const Json* foods = document.find("foods");
    const auto index = foods != nullptr ? indexOfId(*foods, food) : std::nullopt;
    if (index) draft.remove("/foods", *index);
}

}  // namespace nettare
