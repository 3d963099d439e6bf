#include <catch2/catch.hpp>

#include "core/edit/food_edits.h"
#include "core/edit/place.h"
#include "demo.h"
#include "json_edit.h"

using namespace nettare;

TEST_CASE("a cook states a value of a food with its reason", "[edit]") {
    const Json document = demo::skewers();
    const auto edit = setStatedValue(document, "olive-oil", Component::FATRN,
                                     {"0.4", "0.1", "supplier's sheet, May 2026"});
    REQUIRE(edit);
    CHECK(edit->kind == EditKind::Stated);
    const Json after = *applied(document, *edit);
    CHECK(writeJson(*valueAt(after, "/foods/olive-oil/stated")) ==
          R"([{"component":"FATRN","per_100g":"0.4","reason":"supplier's sheet, May 2026",)"
          R"("within":"0.1"}])");
    CHECK(applied(after, inverseOf(*edit)) == document);
    // A second value of the same component takes the first one's place.
    const auto second =
        setStatedValue(after, "olive-oil", Component::FATRN, {"0.2", "", "a new lot"});
    REQUIRE(second);
    const Json corrected = *applied(after, *second);
    CHECK(writeJson(*valueAt(corrected, "/foods/olive-oil/stated")) ==
          R"([{"component":"FATRN","per_100g":"0.2","reason":"a new lot"}])");
}

TEST_CASE("a food takes another row of the table, and what was weighed stays weighed", "[edit]") {
    const Json document = demo::skewers();
    const Json before = *valueAt(document, "/foods/olive-oil/table");
    const auto edit = setTableRow(document, "olive-oil", {"usda-sr", "28", "04055"});
    REQUIRE(edit);
    CHECK(edit->kind == EditKind::OtherRow);
    CHECK(edit->subject == "olive oil");
    const Json after = *applied(document, *edit);
    CHECK(writeJson(*valueAt(after, "/foods/olive-oil/table")) ==
          R"({"number":"04055","release":"28","table":"usda-sr"})");
    CHECK(writeJson(*valueAt(after, "/lines")) == writeJson(*valueAt(document, "/lines")));
    const Json back = *applied(after, inverseOf(*edit));
    CHECK(back == document);
    CHECK(*valueAt(back, "/foods/olive-oil/table") == before);
    const auto same = setTableRow(document, "olive-oil",
                                  {*before.find("table")->text(), *before.find("release")->text(),
                                   *before.find("number")->text()});
    REQUIRE(same);
    CHECK(changesNothing(*same));
}

TEST_CASE("only a food that is there takes a row, and only one that can be", "[edit]") {
    const auto refused = [](std::string_view food, const TableRow& row) {
        const auto edit = setTableRow(demo::skewers(), food, row);
        REQUIRE_FALSE(edit);
        return edit.error().code;
    };
    CHECK(refused("nothing", {"usda-sr", "28", "04055"}) == ErrorCode::UnknownReference);
    CHECK(refused("olive-oil", {"usda-sr", "28", ""}) == ErrorCode::EmptyText);
}

TEST_CASE("a cook says what part of a food's sugars is added, and why", "[edit]") {
    const Json document = demo::skewers();
    const Json stated = *applied(
        document, *setStatedValue(document, "olive-oil", Component::SUGAD, {"1", "", "by eye"}));
    const auto edit = setAddedSugars(stated, "olive-oil", AddedSugarKind::Stated, " 0.5 ",
                                     "supplier's sheet, May 2026");
    REQUIRE(edit);
    CHECK(edit->kind == EditKind::Stated);
    const Json after = *applied(stated, *edit);
    CHECK(writeJson(*valueAt(after, "/foods/olive-oil/added_sugars")) ==
          R"({"kind":"stated","per_100g":"0.5","reason":"supplier's sheet, May 2026"})");
    CHECK(valueAt(after, "/foods/olive-oil/stated") == nullptr);
    CHECK(applied(after, inverseOf(*edit)) == stated);
    const auto none = setAddedSugars(after, "olive-oil", AddedSugarKind::None, "9", "pressed only");
    REQUIRE(none);
    CHECK(writeJson(*valueAt(*applied(after, *none), "/foods/olive-oil/added_sugars")) ==
          R"({"kind":"none","reason":"pressed only"})");
}

TEST_CASE("what is said of added sugars needs a reason, an amount and a food", "[edit]") {
    const auto refused = [](std::string_view food, AddedSugarKind kind, std::string_view per100g,
                            std::string_view reason) {
        const auto edit = setAddedSugars(demo::skewers(), food, kind, per100g, reason);
        REQUIRE_FALSE(edit);
        return edit.error().code;
    };
    using enum AddedSugarKind;
    CHECK(refused("olive-oil", None, "", " ") == ErrorCode::EmptyText);
    CHECK(refused("olive-oil", Stated, " ", "by eye") == ErrorCode::EmptyText);
    CHECK(refused("olive-oil", Stated, "some", "by eye") == ErrorCode::NotADecimal);
    CHECK(refused("olive-oil", Stated, "-1", "by eye") == ErrorCode::NegativeMass);
    CHECK(refused("nothing", None, "", "by eye") == ErrorCode::UnknownReference);
}

TEST_CASE("a stated value needs a number, a reason and a food", "[edit]") {
    const auto refused = [](std::string_view food, const TypedValue& typed) {
        const auto edit = setStatedValue(demo::skewers(), food, Component::FATRN, typed);
        REQUIRE_FALSE(edit);
        return edit.error().code;
    };
    CHECK(refused("olive-oil", {"0.4", "", " "}) == ErrorCode::EmptyText);
    CHECK(refused("olive-oil", {" ", "", "by eye"}) == ErrorCode::EmptyText);
    CHECK(refused("olive-oil", {"some", "", "by eye"}) == ErrorCode::NotADecimal);
    CHECK(refused("olive-oil", {"0.4", "much", "by eye"}) == ErrorCode::NotADecimal);
    CHECK(refused("nothing", {"0.4", "", "by eye"}) == ErrorCode::UnknownReference);
}
