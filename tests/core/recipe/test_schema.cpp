#include <catch2/catch.hpp>

#include "core/recipe/read_recipe.h"

#include "json_edit.h"
#include "published_schema.h"
#include "recipe_documents.h"

namespace nettare {

namespace {

bool agreedOn(PublishedSchema& schema, const MutatedDocument& mutated) {
    const auto reader = [](const Json& json) -> Result<void> {
        const auto read = readRecipe(json);
        if (!read) return fail(read.error());
        return {};
    };
    return agree(schema, reader, mutated);
}

constexpr auto kRecipeSchema = "recipe.schema.json";

}  // namespace

TEST_CASE("the published schema accepts a full and a least recipe document", "[recipe]") {
    PublishedSchema schema{kRecipeSchema};
    CHECK(agreedOn(schema, {"nothing changed", fullRecipe()}));
    CHECK(agreedOn(schema, {"nothing changed", smallRecipe()}));
}

TEST_CASE("the published schema accepts the demo recipes", "[recipe]") {
    PublishedSchema schema{kRecipeSchema};
    for (const char* name : {"barley-beetroot-patties", "prawn-fennel-skewers"}) {
        const std::string path = NETTARE_RESOURCES "/demo/" + std::string{name} + ".json";
        CHECK(agreedOn(schema, {name, jsonOf(fileText(path))}));
    }
}

TEST_CASE("reader and schema agree on each member left out or null", "[recipe]") {
    PublishedSchema schema{kRecipeSchema};
    std::vector<std::string> places;
    collectMembers(fullRecipe(), "", places);
    REQUIRE(places.size() > 180);
    for (const std::string& place : places) {
        agreedOn(schema, {"without " + place, without(fullRecipe(), place)});
        CHECK_FALSE(agreedOn(schema, {place + " null", with(fullRecipe(), place, Json{})}));
    }
}

TEST_CASE("reader and schema agree on two thousand changed documents", "[recipe]") {
    PublishedSchema schema{kRecipeSchema};
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
    CHECK(checkExplained(kRecipeSchema) > 130);
}

}  // namespace nettare
