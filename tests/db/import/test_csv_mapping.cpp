#include "db/import/csv_mapping.h"

#include <catch2/catch.hpp>

namespace nettare {

namespace {

CsvMapping sampleMapping() {
    CsvMapping mapping;
    mapping.table = "village";
    mapping.release = "2024";
    mapping.citation = "Village kitchen table, 2024";
    mapping.separator = ';';
    mapping.decimalSign = ',';
    mapping.numberColumn = "Code";
    mapping.nameColumn = "Name";
    mapping.groupColumn = "Group";
    mapping.gramsOfFood = 50;
    mapping.components = {{"Protein (g)", Component::PROCNT, "g"}, {"Na", Component::NA, "g"}};
    mapping.others = {{"Soluble fibre", "FIBSOL", "g"}};
    mapping.missingMarks = {"", "-"};
    mapping.zeroIsMissing = true;
    return mapping;
}

constexpr auto kSampleJson =
    R"json({"citation":"Village kitchen table, 2024","components":[)json"
    R"json({"column":"Protein (g)","component":"PROCNT","unit":"g"},)json"
    R"json({"column":"Na","component":"NA","unit":"g"}],"decimal_sign":"comma",)json"
    R"json("format":"nettare columns","grams_of_food":"50","group_column":"Group",)json"
    R"json("missing_marks":["","-"],"name_column":"Name","number_column":"Code",)json"
    R"json("others":[{"column":"Soluble fibre","tagname":"FIBSOL","unit":"g"}],)json"
    R"json("release":"2024","separator":"semicolon","table":"village","version":1,)json"
    R"json("zero_is_missing":true})json";

/// The sample with one member changed or taken away, refused.
Error refusedWith(std::string_view key, const std::optional<Json>& value) {
    Json json = csvMappingJson(sampleMapping());
    if (value)
        json.set(key, *value);
    else
        json.remove(key);
    const auto mapping = readCsvMapping(json);
    REQUIRE_FALSE(mapping);
    return mapping.error();
}

}  // namespace

TEST_CASE("a mapping of columns is saved as canonical JSON and reads back the same", "[import]") {
    CHECK(writeJson(csvMappingJson(sampleMapping())) == kSampleJson);
    const auto json = parseJson(kSampleJson);
    REQUIRE(json);
    const auto mapping = readCsvMapping(*json);
    REQUIRE(mapping);
    CHECK(writeJson(csvMappingJson(*mapping)) == kSampleJson);
    CHECK(mapping->separator == ';');
    CHECK(mapping->gramsOfFood == 50);
    CHECK(mapping->components.at(1).component == Component::NA);
}

TEST_CASE("a mapping refuses what it does not know, with a pointer", "[import]") {
    const Error unknown = refusedWith("unit_system", Json{"metric"});
    CHECK(unknown.code == ErrorCode::UnknownKey);
    CHECK(unknown.value("key") == "unit_system");
    CHECK(refusedWith("format", Json{"nettare recipe"}).code == ErrorCode::NotAMapping);
    CHECK(refusedWith("version", Json{2.0}).code == ErrorCode::NewerFormat);
    CHECK(refusedWith("version", {}).code == ErrorCode::MissingKey);
    CHECK(refusedWith("table", Json{"My Table"}).pointer == "/table");
    CHECK(refusedWith("release", Json{""}).code == ErrorCode::EmptyText);
    CHECK(refusedWith("separator", Json{"|"}).code == ErrorCode::NotOneOf);
    CHECK(refusedWith("grams_of_food", Json{"0"}).code == ErrorCode::NotPositive);
    CHECK(refusedWith("missing_marks", Json{"-"}).pointer == "/missing_marks");
}

TEST_CASE("a mapping names each component once, by a tagname that is known", "[import]") {
    CsvMapping twice = sampleMapping();
    twice.components[1].component = Component::PROCNT;
    const auto mapping = readCsvMapping(csvMappingJson(twice));
    REQUIRE_FALSE(mapping);
    CHECK(mapping.error().code == ErrorCode::DuplicateId);
    CHECK(mapping.error().pointer == "/components/1/component");

    Json item = Json::object();
    item.set("column", Json{"Salt"});
    item.set("component", Json{"SALT"});
    item.set("unit", Json{"g"});
    Json list = Json::array();
    list.append(item);
    const Error salt = refusedWith("components", list);
    CHECK(salt.code == ErrorCode::ComponentUnknown);
    CHECK(salt.pointer == "/components/0/component");
    CHECK(refusedWith("components", Json::array()).code == ErrorCode::TooFewItems);

    CsvMapping hidden = sampleMapping();
    hidden.others[0].tagname = "FIBTG";
    CHECK_FALSE(readCsvMapping(csvMappingJson(hidden)));
}

}  // namespace nettare
