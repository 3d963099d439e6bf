#include "core/publish/figures_json.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "kitchen.h"

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// Oil and fennel, both weighed; neither row has vitamin D, the oil's has no trans fat.
Kitchen bowl() {
    Kitchen kitchen;
    kitchen.reading("oil", "41").reading("fennel", "382").reading("dish", "400", "", "cooked");
    kitchen.line(R"({"id":"oil","amount":"3","unit":"tbsp","food":"oil","weighed":["oil"]})");
    kitchen.line(
        R"({"id":"bulbs","amount":"2","piece":"bulb","food":"fennel","weighed":["fennel"]})");
    return kitchen.json("cooked", R"({"readings":["dish"]})");
}

Json answered(const Kitchen& kitchen, Basis basis) {
    const Served served{kitchen};
    return figuresJson(Served::orThrow(figuresPer(basis, served.dossier, served.cooked)),
                       served.dossier, served.cooked);
}

const Json& figureIn(const Json& json, Component component) {
    return (*json.find("figures")->items())[indexOf(component)];
}

std::vector<std::string> keysOf(const Json& json) {
    std::vector<std::string> keys;
    for (const JsonMember& member : *json.members()) keys.push_back(member.key);
    return keys;
}

std::vector<std::string> textsOf(const Json& list, std::string_view key) {
    std::vector<std::string> texts;
    for (const Json& item : *list.items()) texts.push_back(*item.find(key)->text());
    return texts;
}

double numberIn(const Json& json, std::string_view key) {
    return *json.find(key)->number();
}

}  // namespace

TEST_CASE("the answer says what it is of, per what, and by which arithmetic", "[publish]") {
    const Json json = answered(bowl(), Basis::Portion);
    CHECK(keysOf(json) == std::vector<std::string>{"arithmetic", "basis", "figures", "lines", "of",
                                                   "per", "recipe"});
    CHECK(*json.find("basis")->text() == "portion");
    CHECK(*json.find("per")->text() == "per portion of 2 pieces");
    CHECK(*json.find("of")->text() == "this batch");
    CHECK(*json.find("recipe")->text() == "Test dish");
    CHECK(numberIn(json, "arithmetic") == kArithmeticVersion);
}

TEST_CASE("every component is there in its order, missing or not", "[publish]") {
    const Json json = answered(bowl(), Basis::Batch);
    const Json::Array& figures = *json.find("figures")->items();
    REQUIRE(figures.size() == kComponentCount);
    for (const ComponentFacts& facts : allComponents()) {
        const Json& figure = figures[indexOf(facts.component)];
        CHECK(*figure.find("component")->text() == facts.tagname);
        CHECK(*figure.find("unit")->text() == facts.unit);
        CHECK(keysOf(figure) == std::vector<std::string>{"at_least", "at_most", "basis",
                                                         "component", "high", "known_share", "low",
                                                         "missing_in", "nu", "sources", "u", "unit",
                                                         "value"});
    }
}

TEST_CASE("a complete figure is unrounded and its bounds are its value", "[publish]") {
    const Json json = answered(bowl(), Basis::Batch);
    const Json& energy = figureIn(json, ENERC_KCAL);
    const double kcal = 41 * 8.84 + 382 * 0.31;  // 04053 and 11957 of SR28
    CHECK(numberIn(energy, "value") == Approx(kcal).epsilon(1e-14));
    CHECK(numberIn(energy, "at_least") == numberIn(energy, "value"));
    CHECK(numberIn(energy, "at_most") == numberIn(energy, "value"));
    CHECK(numberIn(energy, "known_share") == 1);
    CHECK(energy.find("missing_in")->items()->empty());
    CHECK(numberIn(energy, "low") < kcal);
    CHECK(numberIn(energy, "high") > kcal);
}

TEST_CASE("no bound and infinite degrees of freedom are null, never a number", "[publish]") {
    const Json json = answered(bowl(), Basis::Batch);
    const Json& vitamin = figureIn(json, VITD);
    CHECK(vitamin.find("at_most")->isNull());
    CHECK(vitamin.find("high")->isNull());
    CHECK(numberIn(vitamin, "at_least") == 0);
    CHECK(numberIn(vitamin, "known_share") == 0);
    CHECK(vitamin.find("nu")->isNull());
    const Json& trans = figureIn(json, FATRN);
    CHECK(numberIn(trans, "at_most") == Approx(0.41 * (100 - 13.808 - 72.961 - 10.523)));
    const Json::Array& sources = *figureIn(json, ENERC_KCAL).find("sources")->items();
    const auto rounding = std::ranges::find_if(
        sources, [](const Json& one) { return *one.find("name")->text() == "rounding of oil"; });
    REQUIRE(rounding != sources.end());
    CHECK(rounding->find("nu")->isNull());
    CHECK(numberIn(*rounding, "sensitivity") == Approx(8.84));
    CHECK(numberIn(*rounding, "u") == Approx(1 / std::sqrt(12.0)));  // JCGM 100, 4.3.7; d = 1 g
}

TEST_CASE("foods with missing parts, sources and lines are ordered by name", "[publish]") {
    const Json json = answered(bowl(), Basis::Batch);
    CHECK(textsOf(*json.find("lines"), "id") == std::vector<std::string>{"bulbs", "oil"});
    const std::vector<std::string> sources = textsOf(*figureIn(json, FAT).find("sources"), "name");
    CHECK(sources.size() == 3);
    CHECK(std::ranges::is_sorted(sources));
    CHECK(writeJson(*figureIn(json, VITD).find("missing_in")) == R"(["fennel","oil"])");
}

TEST_CASE("the order of a document's foods changes no byte of the answer", "[publish]") {
    Kitchen backward = bowl();
    Json reversed = Json::array();
    const auto& foods = *backward.document().find("foods")->items();
    for (auto food = foods.rbegin(); food != foods.rend(); ++food) reversed.append(*food);
    backward.json("foods", writeJson(reversed));
    CHECK(writeJson(answered(backward, Basis::Portion)) ==
          writeJson(answered(bowl(), Basis::Portion)));
}

TEST_CASE("a line says its grams, its way and the other ways with their distance", "[publish]") {
    const Json json = answered(bowl(), Basis::Batch);
    const Json& bulbs = (*json.find("lines")->items())[0];
    CHECK(*bulbs.find("food")->text() == "fennel");
    CHECK(*bulbs.find("way")->text() == "weighed");
    CHECK(numberIn(bulbs, "grams_used") == 382);
    CHECK(numberIn(bulbs, "grams_eaten") == 382);
    const Json::Array& others = *bulbs.find("alternatives")->items();
    REQUIRE(others.size() == 1);
    CHECK(*others[0].find("way")->text() == "table");
    CHECK(numberIn(others[0], "grams") == 2 * 234);
    CHECK(numberIn(others[0], "apart") == Approx(2 * 234 / 382.0 - 1));
    CHECK_FALSE(*others[0].find("beyond_uncertainty")->boolean());
}
