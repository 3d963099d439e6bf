#include <catch2/catch.hpp>

#include "core/recipe/read_recipe.h"

#include "document_mutations.h"
#include "json_edit.h"
#include "recipe_documents.h"

#include <nlohmann/json.hpp>

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

using namespace nettare;

namespace {

using SchemaAdapter = valijson::adapters::NlohmannJsonAdapter;

/// The published schema, asked by another program than ours.
class PublishedSchema {
public:
    PublishedSchema() {
        const nlohmann::json text =
            nlohmann::json::parse(fileText(NETTARE_RESOURCES "/schema/recipe.schema.json"));
        valijson::SchemaParser parser;
        parser.populateSchema(SchemaAdapter{text}, schema_);
    }

    [[nodiscard]] bool accepts(const std::string& text) {
        const nlohmann::json document = nlohmann::json::parse(text);
        return validator_.validate(schema_, SchemaAdapter{document}, nullptr);
    }

    /// What the schema objects to, for the message of a test.
    [[nodiscard]] std::string objections(const std::string& text) {
        const nlohmann::json document = nlohmann::json::parse(text);
        valijson::ValidationResults results;
        validator_.validate(schema_, SchemaAdapter{document}, &results);
        std::string all;
        for (const auto& error : results) {
            for (const std::string& step : error.context) all += step;
            all += " " + error.description + "; ";
        }
        return all;
    }

private:
    valijson::Schema schema_;
    valijson::Validator validator_;
};

/// Checks that reader and schema agree, and answers whether the reader accepts.
bool agreedOn(PublishedSchema& schema, const MutatedDocument& mutated) {
    const std::string text = writeJson(mutated.document);
    const auto read = readRecipe(mutated.document);
    const bool accepted = read.has_value();
    if (schema.accepts(text) == accepted) return accepted;
    INFO(mutated.what.substr(0, 300));
    if (accepted)
        FAIL_CHECK("the reader accepts; the schema objects: " << schema.objections(text));
    else
        FAIL_CHECK("the schema accepts; the reader refuses with code "
                   << static_cast<int>(read.error().code) << " at " << read.error().pointer);
    return accepted;
}

/// Every member below `pointer` in the document.
void collectMembers(const Json& json, const std::string& pointer,
                    std::vector<std::string>& places) {
    if (const Json::Object* members = json.members())
        for (const JsonMember& member : *members) {
            const std::string place = pointerTo(pointer, std::string_view{member.key});
            places.push_back(place);
            collectMembers(member.value, place, places);
        }
    if (const Json::Array* items = json.items())
        for (std::size_t i = 0; i < items->size(); ++i)
            collectMembers((*items)[i], pointerTo(pointer, i), places);
}

/// True where people can read what a part of the schema means, there or where it refers to.
bool isExplained(const Json& schema, const Json& part) {
    if (const Json* target = part.find("$ref")) {
        Json copy = schema;
        return isExplained(schema, partAt(copy, target->text()->substr(1)));
    }
    return part.find("title") != nullptr && part.find("description") != nullptr;
}

}  // namespace

TEST_CASE("the published schema accepts a full and a least recipe document", "[recipe]") {
    PublishedSchema schema;
    CHECK(agreedOn(schema, {"nothing changed", fullRecipe()}));
    CHECK(agreedOn(schema, {"nothing changed", smallRecipe()}));
}

TEST_CASE("the published schema accepts the demo recipes", "[recipe]") {
    PublishedSchema schema;
    for (const char* name : {"barley-beetroot-patties", "prawn-fennel-skewers"}) {
        const std::string path = NETTARE_RESOURCES "/demo/" + std::string{name} + ".json";
        CHECK(agreedOn(schema, {name, jsonOf(fileText(path))}));
    }
}

TEST_CASE("reader and schema agree on each member left out or null", "[recipe]") {
    PublishedSchema schema;
    std::vector<std::string> places;
    collectMembers(fullRecipe(), "", places);
    REQUIRE(places.size() > 180);
    for (const std::string& place : places) {
        agreedOn(schema, {"without " + place, without(fullRecipe(), place)});
        CHECK_FALSE(agreedOn(schema, {place + " null", with(fullRecipe(), place, Json{})}));
    }
}

TEST_CASE("reader and schema agree on two thousand changed documents", "[recipe]") {
    PublishedSchema schema;
    DocumentMutator mutator{fullRecipe(), 20261125};
    int accepted = 0;
    int refused = 0;
    for (int i = 0; i < 2000; ++i) {
        CAPTURE(i);
        ++(agreedOn(schema, mutator.next()) ? accepted : refused);
    }
    CHECK(accepted >= 450);
    CHECK(refused >= 500);
}

TEST_CASE("every member of the published form is explained to people", "[recipe]") {
    const Json schema = jsonOf(fileText(NETTARE_RESOURCES "/schema/recipe.schema.json"));
    std::vector<std::string> places;
    collectMembers(schema, "", places);
    int explained = 0;
    for (const std::string& place : places) {
        const std::string parent = place.substr(0, place.rfind('/'));
        if (!parent.ends_with("/properties") && parent != "/definitions") continue;
        INFO(place);
        Json copy = schema;
        CHECK(isExplained(schema, partAt(copy, place)));
        ++explained;
    }
    CHECK(explained > 130);
}
