#include "core/publish/comparable.h"

#include <catch2/catch.hpp>

#include "compared_kitchens.h"
#include "core/publish/comparable_text.h"

using namespace kitchen;

namespace {

/// Why energy per that basis cannot be compared, in words; empty where it can.
std::string whyNot(const Kitchen& before, const Kitchen& after, Basis basis = Basis::Piece,
                   Component component = Component::ENERC_KCAL,
                   Meaning meaningAfter = Meaning::ThisBatch) {
    const ServedState older{before};
    ServedState newer{after};
    newer.served.cooked = Served::orThrow(cook(newer.served.dossier, meaningAfter));
    const auto figuresOf = [&](const ServedState& state) {
        return Served::orThrow(figuresPer(basis, state.served.dossier, state.served.cooked));
    };
    const Figures one = figuresOf(older);
    const Figures other = figuresOf(newer);
    const Comparability comparability{older.state(), one, newer.state(), other};
    const auto reason = comparability.reasonAgainst(component);
    return reason ? notComparableText(*reason, "revision 1", "revision 2") : std::string{};
}

Kitchen withLeft(const char* residue) {
    Kitchen kitchen = dish("3", "7").reading("left", "10", "", "residue");
    return kitchen.json("residues", residue);
}

Kitchen counted(const char* rules, const char* line, const char* pieces = "10") {
    Kitchen kitchen = dish("3", "7").json("counting", rules).line(line);
    return kitchen.json(
        "makes", R"({"pieces":")" + std::string{pieces} + R"(","piece":"cake","plural":"cakes"})");
}

Kitchen weighedDish() {
    Kitchen kitchen = dish("3", "7").reading("done", "380", "", "cooked");
    return kitchen.json("cooked", R"({"readings":["done"]})");
}

const char* const kMixture = R"([{"mixture":["oil","sugar"],"readings":["left"]}])";
const char* const kPlain = R"({"id":"x","amount":"1","unit":"tsp","food":"sugar"})";

}  // namespace

TEST_CASE("from not weighed to weighed what was left over is not comparable", "[publish]") {
    const Kitchen none = dish("3", "7");
    CHECK(whyNot(none, withLeft(kMixture)) ==
          "not comparable: what stayed in the bowl was weighed only in revision 2");
    CHECK(whyNot(withLeft(kMixture), none) ==
          "not comparable: what stayed in the bowl was weighed only in revision 1");
    CHECK(whyNot(none, withLeft(R"([{"line":"oil","readings":["left"]}])")) ==
          "not comparable: oil left in the bowl was weighed only in revision 2");
    CHECK(whyNot(none, withLeft(R"([{"drip":"oil","called":"fat","readings":["left"]}])")) ==
          "not comparable: fat left over was weighed only in revision 2");
    CHECK(whyNot(none, withLeft(R"([{"unknown":true,"readings":["left"]}])")) ==
          "not comparable: what was left over was weighed only in revision 2");
}

TEST_CASE("what was left over of both is comparable, whatever it is called", "[publish]") {
    CHECK(whyNot(withLeft(kMixture), withLeft(kMixture)).empty());
    CHECK(whyNot(withLeft(kMixture), withLeft(R"([{"line":"oil","readings":["left"]}])")).empty());
    CHECK(
        whyNot(withLeft(kMixture), withLeft(R"([{"unknown":true,"readings":["left"]}])")).empty());
}

TEST_CASE("a residue says nothing of what it does not hold", "[publish]") {
    // Neither oil nor sugar has protein; all that is missing of the sugar's row is.
    const Kitchen onlyOil = withLeft(R"([{"line":"oil","readings":["left"]}])");
    CHECK(whyNot(dish("3", "7"), onlyOil, Basis::Piece, Component::FAT) ==
          "not comparable: oil left in the bowl was weighed only in revision 2");
    CHECK(whyNot(dish("3", "7"), onlyOil, Basis::Piece, Component::SUGAR).empty());
    const Kitchen water = withLeft(R"([{"water":true,"readings":["left"]}])");
    CHECK(whyNot(dish("3", "7"), water).empty());
}

TEST_CASE("what is left over of a food that is new is a change of the recipe", "[publish]") {
    const auto fried = [] {
        Kitchen kitchen = dish("3", "7").reading("left", "90", "", "residue");
        kitchen.append("foods", R"({"id":"lard","name":"lard","stated":[{"component":"ENERC_KCAL",
            "per_100g":"900","within":"0","reason":"invented"}]})");
        kitchen.line(R"({"id":"lard","amount":"100","unit":"g","food":"lard"})");
        return kitchen.json("residues", R"([{"line":"lard","readings":["left"]}])");
    };
    CHECK(whyNot(dish("3", "7"), fried()).empty());
}

TEST_CASE("a dish that was weighed once only is not comparable by its weight", "[publish]") {
    CHECK(whyNot(dish("3", "7"), weighedDish(), Basis::Hundred) ==
          "not comparable: the dish was weighed after cooking only in revision 2");
    CHECK(whyNot(weighedDish(), dish("3", "7"), Basis::Hundred) ==
          "not comparable: the dish was weighed after cooking only in revision 1");
    CHECK(whyNot(dish("3", "7"), weighedDish()).empty());
    CHECK(whyNot(weighedDish(), weighedDish(), Basis::Hundred).empty());
}

TEST_CASE("rules of counting that differ are not comparable where they count", "[publish]") {
    const char* const loose = R"({"to_taste":"left out","optional":"counted","ranges":"middle",
        "makes":"middle"})";
    const char* const strict = R"({"to_taste":"a pinch a portion","optional":"left out",
        "ranges":"least","makes":"most"})";
    const auto because = [&](const char* line, const char* pieces = "10",
                             Basis basis = Basis::Piece) {
        return whyNot(counted(loose, line, pieces), counted(strict, line, pieces), basis);
    };
    CHECK(because(kPlain).empty());
    CHECK(because(R"({"id":"x","to_taste":true,"food":"sugar"})") ==
          "not comparable: lines to taste count by another rule");
    CHECK(because(R"({"id":"x","amount":"1","unit":"tsp","food":"sugar","optional":true})") ==
          "not comparable: optional lines count by another rule");
    CHECK(because(R"({"id":"x","amount":"1-2","unit":"tsp","food":"sugar"})") ==
          "not comparable: ranges of amounts count by another rule");
    CHECK(because(kPlain, "4-6") == "not comparable: ranges of pieces count by another rule");
    CHECK(because(kPlain, "4-6", Basis::Batch).empty());
}

TEST_CASE("figures of two meanings are not comparable", "[publish]") {
    CHECK(
        whyNot(dish("3", "7"), dish("3", "7"), Basis::Piece, Component::FAT, Meaning::RecipeMean) ==
        "not comparable: one is of this batch, the other of the recipe mean");
}

TEST_CASE("missing data are named with their foods and their side", "[publish]") {
    CHECK(whyNot(dish("3", "7"), dish("3", "7"), Basis::Piece, Component::CA) ==
          "not comparable: there are no data for fennel, oil and sugar");
    Kitchen known = Kitchen{};
    known.append("foods", R"({"id":"own","name":"own","stated":[{"component":"CA",
        "per_100g":"20","within":"0","reason":"invented"}]})");
    known.line(R"({"id":"own","amount":"100","unit":"g","food":"own"})");
    CHECK(whyNot(known, dish("3", "7"), Basis::Piece, Component::CA) ==
          "not comparable: there are no data for fennel, oil and sugar in revision 2");
}

TEST_CASE("of many foods without data three are named", "[publish]") {
    const NotComparable many{
        WhyNotComparable::MissingParts, {}, {"a", "b", "c", "d", "e"}, true, false};
    CHECK(notComparableText(many, "revision 1", "the draft") ==
          "not comparable: there are no data for a, b, c and 2 more in revision 1");
}
