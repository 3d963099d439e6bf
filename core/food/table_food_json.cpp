#include "core/food/table_food_json.h"

#include "core/food/label_json.h"
#include "core/recipe/read_parts.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"
#include "core/support/sha256.h"

namespace nettare {

namespace {

constexpr long long kMostDataPoints = 1'000'000'000;

void setText(Json& json, std::string_view key, const std::string& text) {
    if (!text.empty()) json.set(key, Json{text});
}

void setNumber(Json& json, std::string_view key, const std::optional<double>& value) {
    if (value) json.set(key, Json{*value});
}

void setCount(Json& json, int n) {
    if (n != 0) json.set("n", Json{static_cast<double>(n)});
}

int readCount(ObjectReader& reader) {
    return reader.has("n") ? static_cast<int>(reader.wholeNumber("n", 0, kMostDataPoints)) : 0;
}

Json rowJson(const TableRow& row) {
    Json json = Json::object();
    json.set("table", Json{row.table}).set("release", Json{row.release});
    return json.set("number", Json{row.number});
}

/// One entry per component of which anything is known: a value, its spread, or both.
Json profileJson(const Profile& profile) {
    Json list = Json::array();
    for (const ComponentFacts& facts : allComponents()) {
        const auto& value = profile.per100g[indexOf(facts.component)];
        const Spread& spread = profile.spread[indexOf(facts.component)];
        Json json = Json::object();
        setNumber(json, "per_100g", value);
        setNumber(json, "standard_error", spread.standardError);
        setCount(json, spread.n);
        setNumber(json, "assumed_relative", spread.assumedRelative);
        if (json.members()->empty()) continue;
        json.set("component", Json{facts.tagname});
        list.append(std::move(json));
    }
    return list;
}

/// An object; empty where the table gives no factor.
Json factorsJson(const ConversionFactors& factors) {
    Json json = Json::object();
    setNumber(json, "nitrogen", factors.nitrogen);
    setNumber(json, "protein", factors.protein);
    setNumber(json, "fat", factors.fat);
    setNumber(json, "carbohydrate", factors.carbohydrate);
    return json;
}

Json addedSugarsJson(const AddedSugars& added) {
    Json json = Json::object();
    json.set("kind", Json{wordFor(added.kind, kAddedSugarWords)});
    if (added.statedPer100g != 0) json.set("per_100g", Json{added.statedPer100g});
    setText(json, "reason", added.reason);
    return json;
}

Json measureJson(const HouseholdMeasure& measure) {
    Json json = Json::object();
    json.set("amount", Json{measure.amount}).set("unit", Json{measure.unit});
    setText(json, "qualifier", measure.qualifier);
    json.set("grams", Json{measure.grams});
    setCount(json, measure.n);
    setNumber(json, "deviation", measure.standardDeviation);
    return json;
}

TableRow readRow(ObjectReader& food) {
    ObjectReader reader = food.object("row");
    TableRow row{reader.id("table"), reader.id("release"), reader.id("number")};
    reader.finish();
    return row;
}

void readProfile(ObjectReader& food, Profile& profile) {
    for (const auto& [json, pointer] : food.items("components", 0, kComponentCount)) {
        ObjectReader reader{json, pointer, food.failure()};
        const std::size_t index = indexOf(readComponent(reader));
        profile.per100g[index] = reader.optionalNumber("per_100g");
        Spread& spread = profile.spread[index];
        spread.standardError = reader.optionalNumber("standard_error");
        spread.n = readCount(reader);
        spread.assumedRelative = reader.optionalNumber("assumed_relative");
        reader.finish();
    }
}

ConversionFactors readFactors(ObjectReader& food) {
    if (!food.has("factors")) return {};
    ObjectReader reader = food.object("factors");
    ConversionFactors factors;
    factors.nitrogen = reader.optionalNumber("nitrogen");
    factors.protein = reader.optionalNumber("protein");
    factors.fat = reader.optionalNumber("fat");
    factors.carbohydrate = reader.optionalNumber("carbohydrate");
    reader.finish();
    return factors;
}

AddedSugars readAdded(ObjectReader& food) {
    ObjectReader reader = food.object("added_sugars");
    AddedSugars added;
    added.kind = reader.oneOf("kind", kAddedSugarWords);
    added.statedPer100g = reader.optionalNumber("per_100g").value_or(0);
    added.reason = reader.optionalText("reason", kProseLength).value_or("");
    reader.finish();
    return added;
}

HouseholdMeasure readMeasure(ObjectReader& reader) {
    HouseholdMeasure measure;
    measure.amount = reader.number("amount");
    measure.unit = reader.text("unit", kNameLength);
    measure.qualifier = reader.optionalText("qualifier", kNameLength).value_or("");
    measure.grams = reader.number("grams");
    measure.n = readCount(reader);
    measure.standardDeviation = reader.optionalNumber("deviation");
    reader.finish();
    return measure;
}

std::optional<LabelFacts> readItsLabel(ObjectReader& food) {
    if (!food.has("label")) return std::nullopt;
    ObjectReader reader = food.object("label");
    const LabelEntry entry = readLabel(reader);
    if (food.failure()) return std::nullopt;
    auto label = labelFrom(entry, reader.pointer());
    if (label) return std::move(*label);
    food.failure() = label.error();
    return std::nullopt;
}

void readNames(ObjectReader& food, std::vector<std::string>& names) {
    for (const auto& [json, pointer] : food.items("other_names", 0, kMostEntries)) {
        const std::string* name = json.text();
        if (name == nullptr && !food.failure())
            food.failure() = Error{ErrorCode::WrongKind}
                                 .with("wanted", "text in quotes")
                                 .with("found", kindOf(json))
                                 .at(pointer);
        if (name != nullptr) names.push_back(*name);
    }
}

}  // namespace

Json tableFoodJson(const TableFood& food) {
    Json json = Json::object();
    json.set("row", rowJson(food.row)).set("name", Json{food.name});
    setText(json, "group", food.group);
    setNumber(json, "refuse_percent", food.refusePercent);
    setText(json, "refuse_note", food.refuseNote);
    if (food.plant) json.set("plant", Json{true});
    Json factors = factorsJson(food.factors);
    if (!factors.members()->empty()) json.set("factors", std::move(factors));
    json.set("components", profileJson(food.profile));
    json.set("added_sugars", addedSugarsJson(food.addedSugars));
    Json measures = Json::array();
    for (const HouseholdMeasure& measure : food.measures) measures.append(measureJson(measure));
    json.set("measures", std::move(measures));
    Json names = Json::array();
    for (const std::string& name : food.otherNames) names.append(Json{name});
    if (food.label) json.set("label", labelJson(*food.label));
    return json.set("other_names", std::move(names));
}

Result<TableFood> readTableFood(const Json& json) {
    std::optional<Error> failure;
    ObjectReader reader{json, "", failure};
    TableFood food;
    food.row = readRow(reader);
    food.name = reader.text("name", kProseLength);
    food.group = reader.optionalText("group", kNameLength).value_or("");
    food.refusePercent = reader.optionalNumber("refuse_percent");
    food.refuseNote = reader.optionalText("refuse_note", kProseLength).value_or("");
    food.plant = reader.optionalFlag("plant");
    food.factors = readFactors(reader);
    readProfile(reader, food.profile);
    food.addedSugars = readAdded(reader);
    for (const auto& [entry, pointer] : reader.items("measures", 0, kMostEntries)) {
        ObjectReader measure{entry, pointer, failure};
        food.measures.push_back(readMeasure(measure));
    }
    readNames(reader, food.otherNames);
    food.label = readItsLabel(reader);
    reader.finish();
    if (failure) return fail(*failure);
    return food;
}

std::string foodVersion(const TableFood& food) {
    return sha256(writeJson(tableFoodJson(food)));
}

}  // namespace nettare
