#include <catch2/catch.hpp>

#include "core/edit/food_row_edits.h"

namespace nettare {

namespace {

const std::string kRye = "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2";
const std::string kOther = "aaaaaaaa-0d4a-4b6f-9e21-7c5d8a90b1f2";

Json documentOf(const std::string& foods) {
    auto json = parseJson(R"({"foods": [)" + foods + "]}");
    REQUIRE(json);
    return std::move(*json);
}

std::string foodText(const std::string& id, const std::string& table, const std::string& release,
                     const std::string& number) {
    return R"({"id": ")" + id + R"(", "name": "x", "table": {"table": ")" + table +
           R"(", "release": ")" + release + R"(", "number": ")" + number + R"("}})";
}

}  // namespace

TEST_CASE("a draft moves on to another version of an own food in one edit that can be taken back",
          "[edit]") {
    const Json document =
        documentOf(foodText("rye", "own", "1", kRye) + "," + foodText("more", "own", "1", kRye) +
                   "," + foodText("salt", "usda-sr", "28", "02047"));
    const TableRow second{"own", "2", kRye};
    const auto edit = moveOwnFoods(document, {kRye}, second, "rye flour");
    REQUIRE(edit);
    CHECK(edit->kind == EditKind::Food);
    CHECK(edit->subject == "rye flour");
    CHECK(edit->changes.size() == 2);
    const auto after = applied(document, *edit);
    REQUIRE(after);
    CHECK(rowsOf(*after) == std::vector<TableRow>{second, {"usda-sr", "28", "02047"}});
    CHECK(applied(*after, inverseOf(*edit)) == document);
    CHECK_FALSE(moveOwnFoods(*after, {kRye}, second, "rye flour"));
}

TEST_CASE("a draft moves from a merged food to the one that stayed", "[edit]") {
    const Json document = documentOf(foodText("rye", "own", "3", kOther));
    const TableRow stays{"own", "1", kRye};
    const auto edit = moveOwnFoods(document, {kRye, kOther}, stays, "rye flour");
    REQUIRE(edit);
    CHECK(rowsOf(*applied(document, *edit)) == std::vector<TableRow>{stays});
}

TEST_CASE("foods that are half written or of a table are left alone", "[edit]") {
    const Json document =
        documentOf(R"({"id": "a", "name": "x", "table": {"table": "own"}}, {"id": "b"}, )" +
                   foodText("salt", "usda-sr", "28", kRye));
    CHECK_FALSE(moveOwnFoods(document, {kRye}, {"own", "2", kRye}, "rye"));
    CHECK(rowsOf(document) == std::vector<TableRow>{{"usda-sr", "28", kRye}});
    CHECK(rowsOf(Json::object()).empty());
}

}  // namespace nettare
