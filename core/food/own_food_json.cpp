#include "core/food/own_food_json.h"

#include "core/food/table_food_json.h"
#include "core/recipe/read_parts.h"
#include "core/recipe/read_recipe.h"
#include "core/support/time_form.h"

namespace nettare {

namespace {

Json copiedRowJson(const TableRow& row) {
    Json json = Json::object();
    json.set("table", Json{row.table}).set("release", Json{row.release});
    return json.set("number", Json{row.number});
}

Json originJson(const OwnFoodOrigin& origin) {
    Json json = Json::object();
    json.set("source", Json{origin.source}).set("date", Json{origin.date});
    if (!origin.note.empty()) json.set("note", Json{origin.note});
    if (!origin.copiedFrom) return json;
    json.set("copied_from", copiedRowJson(*origin.copiedFrom));
    json.set("copied_name", Json{origin.copiedName});
    Json changed = Json::array();
    for (const Component component : origin.changed) {
        Json entry = Json::object();
        changed.append(entry.set("component", Json{factsOf(component).tagname}));
    }
    return json.set("changed", std::move(changed));
}

void readCopied(ObjectReader& reader, OwnFoodOrigin& origin) {
    if (!reader.has("copied_from")) return;
    ObjectReader row = reader.object("copied_from");
    origin.copiedFrom = TableRow{row.id("table"), row.id("release"), row.id("number")};
    row.finish();
    origin.copiedName = reader.text("copied_name", kProseLength);
    for (const auto& [json, pointer] : reader.items("changed", 0, kComponentCount)) {
        ObjectReader entry{json, pointer, reader.failure()};
        origin.changed.push_back(readComponent(entry));
        entry.finish();
    }
}

void readOrigin(ObjectReader& reader, OwnFoodOrigin& origin) {
    origin.source = reader.text("source", kNameLength);
    origin.date = reader.text("date", kNameLength);
    if (!reader.failure() && !isDateForm(origin.date))
        reader.failure() =
            Error{ErrorCode::NotADate}.with("found", origin.date).at(reader.pointer() + "/date");
    origin.note = reader.optionalText("note", kProseLength).value_or("");
    readCopied(reader, origin);
    reader.finish();
}

}  // namespace

Json ownFoodJson(const OwnFood& own) {
    Json json = Json::object();
    return json.set("food", tableFoodJson(own.food)).set("origin", originJson(own.origin));
}

Result<OwnFood> readOwnFood(const Json& json) {
    std::optional<Error> failure;
    ObjectReader reader{json, "", failure};
    OwnFood own;
    const Json* food = reader.value("food");
    ObjectReader origin = reader.object("origin");
    readOrigin(origin, own.origin);
    reader.finish();
    if (failure) return fail(*failure);
    auto read = readTableFood(*food);
    if (!read) {
        Error error = read.error();
        error.pointer = "/food" + error.pointer;
        return fail(error);
    }
    own.food = std::move(*read);
    return own;
}

}  // namespace nettare
