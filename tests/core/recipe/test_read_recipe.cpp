#include <catch2/catch.hpp>

#include "core/recipe/read_recipe.h"

#include "json_edit.h"
#include "recipe_documents.h"

using namespace nettare;

namespace {

/// A member of the full document given another value, and what the reader says of it.
struct ChangedMember {
    const char* place;
    const char* value;
    ErrorCode code;
    const char* pointer;
};

void checkRefusedAt(const Json& document, ErrorCode code, std::string_view pointer) {
    const auto read = readRecipe(document);
    REQUIRE_FALSE(read);
    CHECK(read.error().code == code);
    CHECK(read.error().pointer == pointer);
}

void checkChanges(const std::vector<ChangedMember>& changes) {
    for (const ChangedMember& change : changes) {
        INFO(change.place << " becomes " << change.value);
        checkRefusedAt(with(fullRecipe(), change.place, jsonOf(change.value)), change.code,
                       change.pointer);
    }
}

RecipeDocument documentOf(const Json& json) {
    const auto read = readRecipe(json);
    REQUIRE(read);
    return *read;
}

std::string identityOfFirst(const Json& json) {
    return documentOf(json).foods.front().identity;
}

bool isReadTime(const char* at) {
    return readRecipe(with(fullRecipe(), "/indications/0/at", Json{at})).has_value();
}

}  // namespace

TEST_CASE("a document says its form and version before anything else", "[recipe]") {
    CHECK(readRecipeText("{").error().code == ErrorCode::JsonEndsEarly);
    CHECK(readRecipeText("[]").error().code == ErrorCode::WrongKind);
    checkRefusedAt(without(fullRecipe(), "/format"), ErrorCode::MissingKey, "");
    checkRefusedAt(without(fullRecipe(), "/version"), ErrorCode::MissingKey, "");
    checkChanges({{"/format", R"("kitchen")", ErrorCode::WrongFormat, "/format"},
                  {"/format", "1", ErrorCode::WrongKind, "/format"},
                  {"/version", R"("1")", ErrorCode::WrongKind, "/version"},
                  {"/version", "2", ErrorCode::NewerFormat, "/version"}});
    const auto newer = readRecipe(with(fullRecipe(), "/version", Json{2.0}));
    CHECK(newer.error().value("found") == "2");
    CHECK(newer.error().value("known") == "1");
}

TEST_CASE("what makes no yield, portion or target is refused at its member", "[recipe]") {
    checkChanges(
        {{"/title", R"("")", ErrorCode::EmptyText, "/title"},
         {"/note", "null", ErrorCode::WrongKind, "/note"},
         {"/measures", R"("imp")", ErrorCode::NotOneOf, "/measures"},
         {"/makes/dozen", "1", ErrorCode::UnknownKey, "/makes/dozen"},
         {"/makes/pieces", "12", ErrorCode::WrongKind, "/makes/pieces"},
         {"/portion", "{}", ErrorCode::OneOfNeeded, "/portion"},
         {"/portion/grams", R"("90")", ErrorCode::OneOfNeeded, "/portion"},
         {"/portion", R"({"grams":"0"})", ErrorCode::NotPositive, "/portion/grams"},
         {"/targets/0/component", R"("KCAL")", ErrorCode::ComponentUnknown, "/targets/0/component"},
         {"/targets/0/per", R"("day")", ErrorCode::NotOneOf, "/targets/0/per"},
         {"/targets/0/at_least", R"("1")", ErrorCode::OneOfNeeded, "/targets/0"},
         {"/targets/1/at_least", R"("0")", ErrorCode::NotPositive, "/targets/1/at_least"},
         {"/assumptions/spread_freedom", R"("0")", ErrorCode::NotPositive,
          "/assumptions/spread_freedom"},
         {"/assumptions/piece_spread", R"("-0.1")", ErrorCode::NegativeMass,
          "/assumptions/piece_spread"},
         {"/steps/0/text", R"("a\nb")", ErrorCode::TextNotClean, "/steps/0/text"},
         {"/surprise", "1", ErrorCode::UnknownKey, "/surprise"}});
}

TEST_CASE("a scale, a weight or a series of the wrong form is refused", "[recipe]") {
    checkChanges(
        {{"/scales/0/unit", R"("stone")", ErrorCode::UnknownUnit, "/scales/0/unit"},
         {"/scales/0/readability", R"("0")", ErrorCode::NotPositive, "/scales/0/readability"},
         {"/vessels/0/tare", R"("-1")", ErrorCode::NegativeMass, "/vessels/0/tare"},
         {"/indications/1/shown", R"("1e2")", ErrorCode::NotADecimal, "/indications/1/shown"},
         {"/indications/1/state", R"("raw")", ErrorCode::NotOneOf, "/indications/1/state"},
         {"/readings/0/tare", R"("zero")", ErrorCode::OneOfNeeded, "/readings/0"},
         {"/readings/0/id", R"("A")", ErrorCode::NotAnIdentifier, "/readings/0/id"},
         {"/series/0/kind", R"("per box")", ErrorCode::NotOneOf, "/series/0/kind"},
         {"/series/0/pairs", "[]", ErrorCode::UnknownKey, "/series/0/pairs"},
         {"/series/0/readings", "[]", ErrorCode::TooFewItems, "/series/0/readings"},
         {"/series/2/of", R"("apple")", ErrorCode::UnknownKey, "/series/2/of"},
         {"/series/2/pairs", "[]", ErrorCode::TooFewItems, "/series/2/pairs"},
         {"/series/2/pairs/0/during", R"("a")", ErrorCode::UnknownKey, "/series/2/pairs/0/during"},
         {"/series/0/bench/of", R"("apple")", ErrorCode::UnknownKey, "/series/0/bench/of"},
         {"/series/0/bench/tags", R"(["raw", "raw"])", ErrorCode::TagsNotSorted,
          "/series/0/bench/tags"},
         {"/series/2/bench", R"({"what": "apple"})", ErrorCode::MissingKey, "/series/2/bench"}});
}

TEST_CASE("a food is a composition or another recipe, never both", "[recipe]") {
    checkChanges({{"/foods/2/plant", "true", ErrorCode::OneOfNeeded, "/foods/2"},
                  {"/foods/2/added_sugars", R"({"kind":"none","reason":"x"})",
                   ErrorCode::OneOfNeeded, "/foods/2"},
                  {"/foods/2/table", R"({"table":"t","release":"1","number":"2"})",
                   ErrorCode::OneOfNeeded, "/foods/2"},
                  {"/foods/0/recipe", R"("other.json")", ErrorCode::OneOfNeeded, "/foods/0"},
                  {"/foods/1/stated", "[]", ErrorCode::TooFewItems, "/foods/1/stated"}});
    checkRefusedAt(without(fullRecipe(), "/foods/2/recipe"), ErrorCode::OneOfNeeded, "/foods/2");
    checkRefusedAt(without(fullRecipe(), "/foods/1/stated"), ErrorCode::OneOfNeeded, "/foods/1");
    checkRefusedAt(with(fullRecipe(), "/foods", Json::array()), ErrorCode::TooFewItems, "/foods");
}

TEST_CASE("what a food declares or states is refused at its place", "[recipe]") {
    checkChanges(
        {{"/foods/0/label/rules", R"("mars")", ErrorCode::NotOneOf, "/foods/0/label/rules"},
         {"/foods/0/label/serving_grams", R"("0")", ErrorCode::NotPositive,
          "/foods/0/label/serving_grams"},
         {"/foods/0/label/serving/unit", R"("")", ErrorCode::EmptyText,
          "/foods/0/label/serving/unit"},
         {"/foods/0/label/declares/1/component", R"("fat")", ErrorCode::ComponentUnknown,
          "/foods/0/label/declares/1/component"},
         {"/foods/0/table/number", "17", ErrorCode::WrongKind, "/foods/0/table/number"},
         {"/foods/0/stated/0/per_100g", R"("-1")", ErrorCode::NegativeMass,
          "/foods/0/stated/0/per_100g"},
         {"/foods/0/added_sugars/kind", R"("some")", ErrorCode::NotOneOf,
          "/foods/0/added_sugars/kind"},
         {"/foods/0/added_sugars/kind", R"("all")", ErrorCode::UnknownKey,
          "/foods/0/added_sugars/per_100g"},
         {"/foods/1/added_sugars/kind", R"("stated")", ErrorCode::MissingKey,
          "/foods/1/added_sugars"},
         {"/foods/0/plant", R"("no")", ErrorCode::WrongKind, "/foods/0/plant"}});
}

TEST_CASE("a line or a residue of the wrong form is refused", "[recipe]") {
    checkChanges(
        {{"/lines/0/unit", R"("g")", ErrorCode::OneOfNeeded, "/lines/0"},
         {"/lines/1/unit", R"("egg")", ErrorCode::UnknownUnit, "/lines/1/unit"},
         {"/lines/0/weighed", "[]", ErrorCode::TooFewItems, "/lines/0/weighed"},
         {"/lines/0/way", R"("guess")", ErrorCode::NotOneOf, "/lines/0/way"},
         {"/lines/0/series/use", R"("all")", ErrorCode::NotOneOf, "/lines/0/series/use"},
         {"/lines/0/assumed/grams", R"("0")", ErrorCode::NotPositive, "/lines/0/assumed/grams"},
         {"/lines", "[]", ErrorCode::TooFewItems, "/lines"},
         {"/residues/0/drip", R"("quark")", ErrorCode::OneOfNeeded, "/residues/0"},
         {"/residues/1/mixture", R"("apple")", ErrorCode::WrongKind, "/residues/1/mixture"},
         {"/residues/2/readings", "[]", ErrorCode::TooFewItems, "/residues/2/readings"},
         {"/residues/3/unknown", "false", ErrorCode::NotOneOf, "/residues/3/unknown"},
         {"/residues/3/unknown", "1", ErrorCode::WrongKind, "/residues/3/unknown"},
         {"/residues/4/water", "false", ErrorCode::NotOneOf, "/residues/4/water"},
         {"/residues/5/not_eaten", "false", ErrorCode::NotOneOf, "/residues/5/not_eaten"},
         {"/residues/0/shares", "[]", ErrorCode::UnknownKey, "/residues/0/shares"},
         {"/residues/1/mixed_at", R"("0")", ErrorCode::OutOfRange, "/residues/1/mixed_at"},
         {"/residues/1/shares/0/share", R"("")", ErrorCode::EmptyText,
          "/residues/1/shares/0/share"},
         {"/cooked", "{}", ErrorCode::MissingKey, "/cooked"}});
    checkRefusedAt(without(fullRecipe(), "/lines/0/piece"), ErrorCode::OneOfNeeded, "/lines/0");
    checkRefusedAt(without(fullRecipe(), "/residues/3/unknown"), ErrorCode::OneOfNeeded,
                   "/residues/3");
}

TEST_CASE("a time is ISO 8601 with its offset from UTC", "[recipe]") {
    for (const char* good : {"2026-03-07T18:12:09+01:00", "2026-03-07T18:12+01:00",
                             "2026-12-31T23:59:59Z", "2026-03-07T00:00-12:30"}) {
        INFO(good);
        CHECK(isReadTime(good));
    }
    for (const char* bad :
         {"2026", "2026-03", "2026-03-07", "2026-03-07T18:12", "2026-03-07 18:12Z",
          "2026-13-07T18:12Z", "2026-00-07T18:12Z", "2026-03-32T18:12Z", "2026-03-00T18:12Z",
          "2026-03-07T24:00Z", "2026-03-07T18:60Z", "2026-03-07T18:12:60Z", "2026-03-07T18:12:9Z",
          "2026-03-07T18:12+1:00", "2026-03-07T18:12+0100", "2026-03-07T18:12+01:60",
          "2026-03-07T18:12:09.5Z", "26-03-07T18:12:09+01:00"}) {
        INFO(bad);
        CHECK_FALSE(isReadTime(bad));
    }
    checkChanges({{"/indications/0/at", R"("noon")", ErrorCode::NotATime, "/indications/0/at"}});
}

TEST_CASE("pieces weighed together are a whole number from 1 to 9999", "[recipe]") {
    const auto pieces = [](const char* text) {
        return documentOf(with(fullRecipe(), "/readings/0/pieces", Json{text})).readings[0].pieces;
    };
    CHECK(pieces("1") == 1);
    CHECK(pieces("9999") == 9999);
    for (const char* bad : {R"("0")", R"("01")", R"("10000")", R"("1.5")", R"("-1")", R"("six")"})
        checkChanges({{"/readings/0/pieces", bad, ErrorCode::OutOfRange, "/readings/0/pieces"}});
    checkChanges({{"/readings/0/pieces", "6", ErrorCode::WrongKind, "/readings/0/pieces"}});
    CHECK(documentOf(fullRecipe()).readings[1].pieces == 1);
}

TEST_CASE("a food's identity is what it is, not what a recipe calls it", "[recipe]") {
    const Json full = fullRecipe();
    const Json renamed =
        with(with(full, "/foods/0/id", Json{"curd"}), "/foods/0/name", Json{"curd"});
    CHECK(identityOfFirst(renamed) == identityOfFirst(full));
    const Json otherRow = with(full, "/foods/0/table/number", Json{"00018"});
    CHECK(identityOfFirst(otherRow) != identityOfFirst(full));
    CHECK(identityOfFirst(without(full, "/foods/0/label")) != identityOfFirst(full));
    CHECK(identityOfFirst(full).find("\"name\"") == std::string::npos);
}
