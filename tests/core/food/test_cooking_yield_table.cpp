#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/food/cooking_yield_table.h"

namespace nettare {

namespace {

const CookingYield& atRow(int sheetRow) {
    static const CookingYield kNone;
    const CookingYield* found = cookingYieldTable().atSheetRow(sheetRow);
    CHECK(found != nullptr);
    return found == nullptr ? kNone : *found;
}

template <class Holds>
std::vector<int> rowsWhere(const Holds& holds) {
    std::vector<int> rows;
    for (const CookingYield& row : cookingYieldTable().all())
        if (holds(row)) rows.push_back(row.sheetRow);
    return rows;
}

std::size_t countWithout(auto member) {
    return rowsWhere([member](const CookingYield& row) { return !(row.*member); }).size();
}

/// The head of a table's text, and then these lines.
std::string yieldText(const std::string& lines) {
    return "# a source\nsheet_row|food_group|food_number|description|method|yield_percent|n|"
           "standard_deviation_percent|least_percent|most_percent|moisture_change_percent|"
           "fat_change_percent|release_year\n" +
           lines;
}

}  // namespace

TEST_CASE("release 2 has 173 cooking yields, and 16 are of 1975", "[yields]") {
    REQUIRE(cookingYieldTable().all().size() == 173);
    CHECK(cookingYieldTable().all().front().sheetRow == 2);
    CHECK(cookingYieldTable().all().back().sheetRow == 174);
    // By the sheet's own note these come from Agriculture Handbook 102.
    CHECK(rowsWhere([](const CookingYield& row) { return row.isOfHandbook102(); }) ==
          std::vector<int>{68, 69, 70, 71, 72, 73, 74, 75, 76, 77, 78, 79, 93, 94, 95, 160});
    CHECK(std::ranges::all_of(cookingYieldTable().all(), [](const CookingYield& row) {
        return row.isOfHandbook102() || (row.releaseYear >= 2000 && row.releaseYear <= 2014);
    }));
}

TEST_CASE("what the sheet of yields leaves open is unknown", "[yields]") {
    // Empty cells counted column by column in the published sheet.
    CHECK(countWithout(&CookingYield::foodNumber) == 10);
    CHECK(countWithout(&CookingYield::n) == 15);
    CHECK(countWithout(&CookingYield::standardDeviationPercent) == 63);
    CHECK(countWithout(&CookingYield::leastPercent) == 46);
    CHECK(countWithout(&CookingYield::mostPercent) == 46);
    CHECK(countWithout(&CookingYield::moistureChangePercent) == 23);
    CHECK(countWithout(&CookingYield::fatChangePercent) == 23);
}

TEST_CASE("yields are those read by eye in the published sheet", "[yields]") {
    // 2: tri-tip roast; 84, n 20, 3.052, 77 to 89, moisture -22.38, fat -0.12, 2003
    const CookingYield& roast = atRow(2);
    CHECK(roast.foodGroup == "1300");
    CHECK(roast.foodNumber == "13953");
    CHECK(roast.description ==
          "Beef, bottom sirloin, tri-tip roast, separable lean and fat, trimmed to 0\" fat, all "
          "grades");
    CHECK(roast.method == "Baked or Roasted, unspecified");
    CHECK(roast.yieldPercent == 84);
    CHECK(roast.n == 20);
    CHECK(roast.standardDeviationPercent == 3.052);
    CHECK(roast.leastPercent == 77.0);
    CHECK(roast.mostPercent == 89.0);
    CHECK(roast.moistureChangePercent == -22.38);
    CHECK(roast.fatChangePercent == -0.12);
    CHECK(roast.releaseYear == 2003);
    // 6: chuck eye steak, grilled; the sheet's cell is not rounded: 80.16846845907656
    CHECK(atRow(6).yieldPercent == 80.16846845907656);
    // 20: ground beef, high fat (>22%), patty, broiled or grilled; 63, fat -11.98
    CHECK(atRow(20).yieldPercent == 63);
    CHECK(atRow(20).fatChangePercent == -11.98);
    // 76: whole chicken, roasted; 78 within 68 to 84, all else empty, 1975
    CHECK(atRow(76).foodNumber == "05004");
    CHECK(atRow(76).method == "Baked or Roasted, specified time");
    CHECK(atRow(76).yieldPercent == 78);
    CHECK(atRow(76).n == std::nullopt);
    CHECK(atRow(76).mostPercent == 84.0);
    CHECK(atRow(76).moistureChangePercent == std::nullopt);
    // 82: chicken wing, roasted; 78, moisture 2.45, fat 3.55
    CHECK(atRow(82).yieldPercent == 78);
    CHECK(atRow(82).moistureChangePercent == 2.45);
    CHECK(atRow(82).fatChangePercent == 3.55);
    // 94: lamb shoulder, shank, breast, flank, braised; no food number, 60
    CHECK(atRow(94).foodNumber == std::nullopt);
    CHECK(atRow(94).yieldPercent == 60);
    // 100: bacon, microwaved; 29, n 3, moisture -34.75, fat -35.45
    CHECK(atRow(100).method == "Microwaved");
    CHECK(atRow(100).yieldPercent == 29);
    CHECK(atRow(100).n == 3);
    CHECK(atRow(100).fatChangePercent == -35.45);
    // 106: ham and water product, whole, boneless, roasted; 96, 2.371
    CHECK(atRow(106).yieldPercent == 96);
    CHECK(atRow(106).standardDeviationPercent == 2.371);
    // 148: pork feet, simmered; 36
    CHECK(atRow(148).yieldPercent == 36);
    // 174: veal liver, pan-fried; 68, n 2, 67.5 to 67.64, moisture -30.44
    CHECK(atRow(174).yieldPercent == 68);
    CHECK(atRow(174).standardDeviationPercent == std::nullopt);
    CHECK(atRow(174).mostPercent == 67.64);
    CHECK(atRow(174).moistureChangePercent == -30.44);
}

TEST_CASE("a yield lies within its published range, but for veal liver by rounding", "[yields]") {
    CHECK(rowsWhere([](const CookingYield& row) {
              return row.leastPercent &&
                     (row.yieldPercent < *row.leastPercent || row.yieldPercent > *row.mostPercent);
          }) == std::vector<int>{174});
}

TEST_CASE("nine published spreads are not those of their n samples", "[yields]") {
    // Of n samples with standard deviation s, the range is at most s sqrt(2 (n - 1)): two samples
    // at the ends and all others in the middle. 1 % for the rounding of s and of the ends.
    CHECK(rowsWhere([](const CookingYield& row) {
              if (!row.standardDeviationPercent || !row.n) return false;
              const double widest = *row.standardDeviationPercent * std::sqrt(2.0 * (*row.n - 1));
              return *row.mostPercent - *row.leastPercent > 1.01 * widest;
          }) == std::vector<int>{20, 99, 123, 125, 126, 129, 132, 137, 141});
}

TEST_CASE("a row that the sheet of yields does not have is not found", "[yields]") {
    for (const int row : {-1, 0, 1, 175}) CHECK(cookingYieldTable().atSheetRow(row) == nullptr);
    for (const CookingYield& row : cookingYieldTable().all())
        CHECK(cookingYieldTable().atSheetRow(row.sheetRow) == &row);
}

TEST_CASE("a broken text of cooking yields is refused by its line", "[yields]") {
    const auto lineOf = [](const std::string& text) {
        const auto table = CookingYieldTable::read(text);
        CHECK((table || table.error().code == ErrorCode::WrongFormat));
        return table ? 0 : table.error().line;
    };
    const std::string whole = "2|1300|13953|Beef|Braised|84|20|3.052|77|89|-22.38|-0.12|2003\n";
    const std::string gaps = "3|1300|-|Beef|Braised|84|-|-|-|-|-|-|1975\n";
    CHECK(lineOf(yieldText(whole + gaps)) == 0);
    CHECK(lineOf("") == 1);
    CHECK(lineOf(yieldText(gaps + whole)) == 4);
    CHECK(lineOf(yieldText(whole + whole)) == 4);
    CHECK(lineOf(yieldText("2|1300|-|Beef|Braised|-|-|-|-|-|-|-|1975\n")) == 3);
    CHECK(lineOf(yieldText("2|1300|-|-|Braised|84|-|-|-|-|-|-|1975\n")) == 3);
    CHECK(lineOf(yieldText("2|1300|-|Beef|Braised|84|0|-|-|-|-|-|1975\n")) == 3);
    CHECK(lineOf(yieldText("2|1300|-|Beef|Braised|84|-|-|-|-|n/a|-|1975\n")) == 3);
    CHECK(lineOf(yieldText("2|1300|-|Beef|Braised|84|-|-|-|-|-|-|-\n")) == 3);
    CHECK(lineOf(yieldText("2|1300|-|Beef|Braised|84\n")) == 3);
}

}  // namespace nettare
