#include <catch2/catch.hpp>

#include "core/food/component.h"
#include "core/food/label_words.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"

#include "json_edit.h"

#include <algorithm>

using namespace nettare;

namespace {

using WordList = std::vector<std::string>;

Json publishedForm() {
    return jsonOf(fileText(NETTARE_RESOURCES "/schema/recipe.schema.json"));
}

WordList enumAt(const std::string& pointer) {
    Json schema = publishedForm();
    WordList words;
    for (const Json& word : *partAt(schema, "/definitions/" + pointer + "/enum").items())
        words.push_back(*word.text());
    return words;
}

WordList joined(WordList first, const WordList& second) {
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

template <class T, std::size_t N>
WordList wordsOf(const std::array<Word<T>, N>& known) {
    WordList words;
    for (const Word<T>& word : known) words.emplace_back(word.word);
    return words;
}

std::size_t enumsIn(const Json& json) {
    std::size_t count = json.find("enum") != nullptr ? 1 : 0;
    if (const Json::Object* members = json.members())
        for (const JsonMember& member : *members) count += enumsIn(member.value);
    if (const Json::Array* items = json.items())
        for (const Json& item : *items) count += enumsIn(item);
    return count;
}

double limitAt(const std::string& pointer) {
    Json schema = publishedForm();
    return *partAt(schema, pointer).number();
}

}  // namespace

TEST_CASE("the words of a document are those of the published form", "[recipe]") {
    CHECK(enumAt("indication/properties/state") == wordsOf(kStateWords));
    CHECK(joined(enumAt("piece_series/properties/kind"), enumAt("ratio_series/properties/kind")) ==
          wordsOf(kSeriesWords));
    CHECK(enumAt("series_binding/properties/use") == wordsOf(kUseWords));
    CHECK(enumAt("measured_line/properties/way") == wordsOf(kWayWords));
    CHECK(enumAt("measured_line/properties/fill") == wordsOf(kFillWords));
    CHECK(enumAt("food_state") == wordsOf(kFoodStateWords));
    CHECK(enumAt("counting/properties/to_taste") == wordsOf(kToTasteWords));
    CHECK(enumAt("counting/properties/optional") == wordsOf(kOptionalWords));
    CHECK(enumAt("counting/properties/ranges") == wordsOf(kRangeWords));
    CHECK(enumAt("counting/properties/makes") == wordsOf(kRangeWords));
    CHECK(enumAt("target/properties/per") == wordsOf(kBasisWords));
    CHECK(enumAt("label/properties/rules") == wordsOf(kLabelRulesWords));
    CHECK(enumAt("label/properties/per") == wordsOf(kLabelPerWords));
    CHECK(enumAt("label/properties/basis") == wordsOf(kLabelStateWords));
    CHECK(enumAt("label_assent/properties/finding") == wordsOf(kLabelFindingWords));

    Json schema = publishedForm();
    WordList systems;
    for (const Json& word : *partAt(schema, "/properties/measures/enum").items())
        systems.push_back(*word.text());
    CHECK(systems == wordsOf(kSystemWords));
}

TEST_CASE("the kinds of added sugars stand in the form by what they need", "[recipe]") {
    WordList published = joined(enumAt("added_sugars_by_kind/properties/kind"),
                                enumAt("added_sugars_stated/properties/kind"));
    WordList known = wordsOf(kAddedSugarWords);
    std::ranges::sort(published);
    std::ranges::sort(known);
    CHECK(published == known);
    CHECK(enumAt("added_sugars_stated/properties/kind") == WordList{"stated"});
}

TEST_CASE("units and components of the form are those that the program knows", "[recipe]") {
    CHECK(enumAt("unit") == WordList(kUnitSymbols.begin(), kUnitSymbols.end()));
    WordList tagnames;
    for (const ComponentFacts& facts : allComponents()) tagnames.emplace_back(facts.tagname);
    CHECK(enumAt("component") == tagnames);
    for (const std::string_view symbol : kUnitSymbols)
        CHECK(findUnit(symbol, MeasureSystem::UsCustomary) != nullptr);
    for (const Unit& unit : allUnits())
        CHECK(std::ranges::find(kUnitSymbols, unit.symbol) != kUnitSymbols.end());
}

TEST_CASE("only pints and the like need a country in a metric kitchen", "[recipe]") {
    for (const std::string_view symbol : kUnitSymbols)
        for (const Word<MeasureSystem>& system : kSystemWords) {
            CAPTURE(symbol, system.word);
            const bool asked =
                symbol == "fl oz" || symbol == "pint" || symbol == "quart" || symbol == "gal";
            const bool known = findUnit(symbol, system.meaning) != nullptr;
            CHECK(known != (asked && system.meaning == MeasureSystem::Metric));
        }
}

TEST_CASE("the form has no list of words beside these", "[recipe]") {
    // state, kind twice, use, way, per, rules, measures, added sugars twice, unit, component, fill,
    // state of a food, counting four times, per and basis of a label, finding, only on labels
    CHECK(enumsIn(publishedForm()) == 22);
}

TEST_CASE("the limits of the form are those of the reader", "[recipe]") {
    CHECK(limitAt("/definitions/name/maxLength") == kNameLength);
    CHECK(limitAt("/definitions/prose/maxLength") == kProseLength);
    CHECK(limitAt("/definitions/amount/maxLength") == kAmountLength);
    CHECK(limitAt("/definitions/label/properties/declares/maxItems") == kLabelLineCount);
    CHECK(limitAt("/definitions/tags/maxItems") == kMostTags);
    CHECK(limitAt("/properties/lines/maxItems") == kMostEntries);
    CHECK(limitAt("/properties/version/const") == kRecipeVersion);
    Json schema = publishedForm();
    CHECK(*partAt(schema, "/properties/format/const").text() == kRecipeFormat);
}

TEST_CASE("a way and a basis are named by their words", "[recipe]") {
    for (const Word<Way>& way : kWayWords) CHECK(nameOf(way.meaning) == way.word);
    for (const Word<Basis>& basis : kBasisWords) {
        CHECK(nameOf(basis.meaning) == basis.word);
        CHECK(basisNamed(basis.word) == basis.meaning);
    }
    CHECK_FALSE(basisNamed("pan"));
}
