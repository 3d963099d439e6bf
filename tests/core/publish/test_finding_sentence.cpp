#include "core/publish/finding_sentence.h"

#include <catch2/catch.hpp>

#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// The sentences of all findings on the only line.
std::vector<std::string> sentences(const Kitchen& kitchen) {
    const Served served{kitchen};
    const LineGrams& grams = served.cooked.lines[0].ways;
    std::vector<std::string> found;
    for (const LineFinding& finding : findingsOf(served.dossier, 0, 0, grams))
        found.push_back(findingSentence(served.dossier, 0, 0, grams, finding));
    return found;
}

using Sentences = std::vector<std::string>;

}  // namespace

TEST_CASE("a line with nothing to ask has no findings", "[publish]") {
    CHECK(
        sentences(Kitchen{}.line(R"({"id":"o","amount":"2","unit":"tbsp","food":"oil"})")).empty());
}

TEST_CASE("ways further apart than their uncertainty name both and the better", "[publish]") {
    Kitchen kitchen = Kitchen{}.reading("r", "60");
    Kitchen worse = kitchen;
    kitchen.line(R"({"id":"o","amount":"3","unit":"tbsp","food":"oil","weighed":["r"]})");
    CHECK(sentences(kitchen) ==
          Sentences{"table says 40.5 g, 33 % less than 60 g by weighed: more than their "
                    "uncertainty explains"});
    worse.line(
        R"({"id":"o","amount":"3","unit":"tbsp","food":"oil","weighed":["r"],"way":"table"})");
    CHECK(sentences(worse) ==
          Sentences{"weighed says 60 g, 48 % more than 40.5 g by table: more than their "
                    "uncertainty explains; take the way “weighed”",
                    "table was chosen, and “weighed” is open, which says more"});
}

TEST_CASE("what was weighed cooked does not meet the values of a raw row", "[publish]") {
    Kitchen kitchen = Kitchen{}.reading("r", "200", "", "cooked");
    kitchen.line(R"({"id":"f","amount":"1","piece":"head","food":"fennel","weighed":["r"]})");
    CHECK(sentences(kitchen) ==
          Sentences{"weighed cooked, but the values of “fennel bulb, raw” are raw: choose a row "
                    "for cooked, or give the yield between the two"});
}

TEST_CASE("a label that speaks of it prepared asks what was weighed", "[publish][label]") {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"spirals","name":"spirals","label":{"rules":"eu","per":"100g",
        "basis":"prepared","declares":[{"component":"FAT","printed":"1.2"}]}})");
    kitchen.line(R"({"id":"s","amount":"500","unit":"g","food":"spirals"})");
    CHECK(sentences(kitchen) ==
          Sentences{"the label of spirals speaks of it prepared: if it was weighed so, write "
                    "“cooked” as its preparation, else use a label as sold"});
}

TEST_CASE("measures that do not scale are named with their grams", "[publish]") {
    TableFood sauce = kitchen::row("06150", "barbecue sauce");
    kitchen::set(sauce, Component::ENERC_KCAL, 172);
    sauce.measures = {{0.5, "cup", "", 143, 0, {}}, {1, "cup", "", 279, 0, {}}};
    CHECK(sentences(Kitchen{}
                        .row("sauce", sauce)
                        .line(R"({"id":"s","amount":"1/2","unit":"cup","food":"sauce"})")) ==
          Sentences{"the table's measures do not scale: 0.5 cup = 143 g, but 1 cup = 279 g; weigh "
                    "it"});
}

TEST_CASE("a doubtful refuse says why", "[publish]") {
    TableFood nuts = kitchen::row("12155", "walnuts");
    kitchen::set(nuts, Component::ENERC_KCAL, 654);
    nuts.refusePercent = 55;
    nuts.refuseNote = "shell, when bought in shell";
    CHECK(
        sentences(
            Kitchen{}
                .row("nuts", nuts)
                .line(
                    R"({"id":"n","amount":"100","unit":"g","food":"nuts","as_purchased":true})")) ==
        Sentences{"the table's refuse of 55 % is doubtful (shell, when bought in shell): it is "
                  "the shell, and the food is mostly bought without; weigh before and after "
                  "trimming"});
}

TEST_CASE("a size that is not said says between what", "[publish]") {
    TableFood onion = kitchen::row("11282", "onion, raw");
    kitchen::set(onion, Component::ENERC_KCAL, 40);
    onion.measures = {{1, "large onion", "", 150, 0, {}}, {1, "small onion", "", 70, 0, {}}};
    const auto said = [&](const std::string& size) {
        return sentences(
            Kitchen{}
                .row("onion", onion)
                .line(R"({"id":"o","amount":"1","piece":"onion","food":"onion")" + size + "}"));
    };
    CHECK(said("") ==
          Sentences{"the size is not said, and the table has 70 g to 150 g each: say it"});
    CHECK(said(R"(,"size":"large")").empty());
}

TEST_CASE("a small reading says what its rounding is", "[publish]") {
    Kitchen kitchen = Kitchen{}.reading("r", "4");
    kitchen.line(R"({"id":"s","amount":"1","unit":"tsp","food":"sugar","weighed":["r"]})");
    CHECK(sentences(kitchen) ==
          Sentences{"r is under 20 steps of its scale: rounding alone is 10 % of it; weigh more at "
                    "once, or on a finer scale"});
}
