#include "core/nutrition/line_findings.h"

#include <catch2/catch.hpp>

#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

std::vector<LineFinding> findings(const Kitchen& kitchen) {
    const Served served{kitchen};
    return findingsOf(served.dossier, 0, 0, served.cooked.lines[0].ways);
}

std::vector<LineFindingKind> kinds(const Kitchen& kitchen) {
    std::vector<LineFindingKind> found;
    for (const LineFinding& finding : findings(kitchen)) found.push_back(finding.kind);
    return found;
}

using Kinds = std::vector<LineFindingKind>;

/// A tin of 400 g of a row that is drained.
TableFood drainedBeans() {
    TableFood food = kitchen::row("16358", "chickpeas, canned, drained");
    kitchen::set(food, Component::ENERC_KCAL, 139);
    food.measures = {{1, "cup", "", 152, 0, {}}};
    return food;
}

Kitchen beans(const std::string& more) {
    return Kitchen{}.row("beans", drainedBeans()).line(R"({"id":"b","food":"beans",)" + more + "}");
}

}  // namespace

TEST_CASE("a state that is said is held against the row, one that is not said is the row's",
          "[nutrition]") {
    CHECK(kinds(beans(R"("amount":"1","unit":"cup")")).empty());
    CHECK(kinds(beans(R"("amount":"100","unit":"g","state":"drained")")).empty());
    CHECK(kinds(beans(R"("amount":"100","unit":"g","preparation":"drained")")).empty());
    CHECK(kinds(beans(R"("amount":"100","unit":"g","state":"dry")")) ==
          Kinds{LineFindingKind::StateMismatch});
    CHECK(kinds(beans(R"("amount":"100","unit":"g","preparation":"boiled")")) ==
          Kinds{LineFindingKind::StateMismatch});
}

TEST_CASE("what a label speaks of is held against what was weighed", "[nutrition][label]") {
    const auto tin = [](const char* basis, const char* state) {
        Kitchen kitchen;
        kitchen.append("foods",
                       std::string{R"({"id":"tin","name":"white beans","label":{"rules":"eu",
            "per":"100g","basis":")"} +
                           basis + R"(","declares":[{"component":"FAT","printed":"1.2"}]}})");
        return kitchen.line(
            std::string{R"({"id":"t","amount":"100","unit":"g","food":"tin","state":")"} + state +
            "\"}");
    };
    CHECK(kinds(tin("drained", "drained")).empty());
    CHECK(kinds(tin("drained", "dry")) == Kinds{LineFindingKind::StateMismatch});
    CHECK(kinds(tin("prepared", "cooked")).empty());
    CHECK(kinds(tin("prepared", "dry")) == Kinds{LineFindingKind::StateMismatch});
    CHECK(kinds(tin("as-sold", "dry")).empty());
}

TEST_CASE("what a label says of it prepared is asked where nothing says what was weighed",
          "[nutrition][label]") {
    const auto spirals = [](const std::string& line) {
        Kitchen kitchen;
        kitchen.append("foods",
                       R"({"id":"spirals","name":"spirals","label":{"rules":"eu","per":"100g",
            "basis":"prepared","serving_grams":"250","serving":{"amount":"1","unit":"plate"},
            "declares":[{"component":"FAT","printed":"1.2"}]}})");
        return kitchen.line(R"({"id":"t","food":"spirals",)" + line + "}");
    };
    CHECK(kinds(spirals(R"("amount":"500","unit":"g")")) ==
          Kinds{LineFindingKind::PreparedNotSaid});
    CHECK(kinds(spirals(R"("amount":"500","unit":"g","preparation":"cooked")")).empty());
    CHECK(kinds(spirals(R"("amount":"2","piece":"plates")")).empty());
}

TEST_CASE("a yield to the row's state answers the mismatch, one to another state is one",
          "[nutrition]") {
    const auto yield = [](const char* to) {
        return beans(std::string{R"("amount":"100","unit":"g","state":"dry","yield":{"factor":"2.4",
            "within":"0.2","reason":"my pot","to":")"} +
                     to + "\"}");
    };
    CHECK(kinds(yield("drained")).empty());
    const auto found = findings(yield("cooked"));
    REQUIRE(found.size() == 1);
    CHECK(found[0].weighed == FoodState::Cooked);
    CHECK(found[0].row == FoodState::Drained);
}

TEST_CASE("cooked readings are cooked, and grams in the row's own state are the better way",
          "[nutrition]") {
    Kitchen kitchen = Kitchen{}.row("beans", drainedBeans());
    kitchen.reading("r", "300", "", "cooked");
    kitchen.line(R"({"id":"b","food":"beans","amount":"2","unit":"cup","weighed":["r"]})");
    const auto found = findings(kitchen);
    REQUIRE(found.size() == 1);
    CHECK(found[0].kind == LineFindingKind::StateMismatch);
    CHECK(found[0].better == Way::Table);
}

TEST_CASE("what was bought with bone and trimmed is without", "[nutrition]") {
    const auto chicken = [](const std::string& more) {
        TableFood food = kitchen::row("05006", "whole chicken, with skin, raw");
        kitchen::set(food, Component::ENERC_KCAL, 215);
        food.refusePercent = 32;
        food.refuseNote = "bone";
        return Kitchen{}
            .row("bird", food)
            .line(R"({"id":"c","food":"bird","amount":"1500","unit":"g",)" + more + "}");
    };
    CHECK(kinds(chicken(R"("state":"with bone","as_purchased":true)")).empty());
    CHECK(kinds(chicken(R"("state":"with bone")")) == Kinds{LineFindingKind::StateMismatch});
}

TEST_CASE("a worse way that was chosen names the better one", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("r", "40");
    kitchen.line(
        R"({"id":"o","amount":"3","unit":"tbsp","food":"oil","weighed":["r"],"way":"table"})");
    const auto found = findings(kitchen);
    REQUIRE(found.size() == 1);
    CHECK(found[0].kind == LineFindingKind::BetterWayOpen);
    CHECK(found[0].better == Way::Weighed);
    CHECK(found[0].way == 0);
}

TEST_CASE("a worse way that disagrees is no better", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("r", "60");
    kitchen.line(R"({"id":"o","amount":"3","unit":"tbsp","food":"oil","weighed":["r"]})");
    const auto found = findings(kitchen);
    REQUIRE(found.size() == 1);
    CHECK(found[0].kind == LineFindingKind::WaysDisagree);
    CHECK(found[0].way == 1);
    CHECK_FALSE(found[0].better);
    CHECK(found[0].relative == Approx(40.5 / 60 - 1));
}

TEST_CASE("small readings of a series are found one by one", "[nutrition]") {
    Kitchen kitchen = Kitchen{}.reading("one", "12").reading("two", "25");
    kitchen.append("series", R"({"id":"s","name":"s","kind":"per piece","of":"leaf",
                                 "readings":["one","two"]})");
    kitchen.line(R"({"id":"f","amount":"4","piece":"leaf","food":"fennel",
                     "series":{"id":"s","use":"others"}})");
    const auto found = findings(kitchen);
    REQUIRE(found.size() == 1);
    CHECK(found[0].kind == LineFindingKind::SmallReading);
    // 0.41 d of a net of 12 d.
    CHECK(found[0].relative == Approx(0.0340).margin(0.0001));
}
