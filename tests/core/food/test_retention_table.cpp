#include <algorithm>
#include <catch2/catch.hpp>
#include <set>
#include <utility>

#include "core/food/retention_table.h"

namespace nettare {

using enum Component;

namespace {

/// A code and a published nutrient number.
using Cell = std::pair<std::string, int>;

/// Every factor of the table, in its order.
template <class Visit>
void forEachFactor(const Visit& visit) {
    for (const RetentionFactors& factors : retentionTable().all())
        for (std::size_t i = 0; i < kRetainedNutrientCount; ++i)
            visit(Cell{factors.code, retainedNutrients()[i].number}, factors.percentKept[i]);
}

const RetentionFactors& atCode(std::string_view code) {
    static const RetentionFactors kNone;
    const RetentionFactors* found = retentionTable().find(code);
    CHECK(found != nullptr);
    return found == nullptr ? kNone : *found;
}

/// The head of a table's text, and then these lines.
std::string withHead(const std::string& lines) {
    std::string text = "# a source\ncode|food_group|description";
    for (const RetainedNutrient& nutrient : retainedNutrients())
        text += "|" + std::to_string(nutrient.number);
    return text + "\n" + lines;
}

std::string factorLine(const std::string& code, const std::string& first) {
    std::string text = code + "|0100|CHEESE,BAKED|" + first;
    for (std::size_t i = 1; i < kRetainedNutrientCount; ++i) text += "|100";
    return text + "\n";
}

}  // namespace

TEST_CASE("release 6 has 270 codes, 26 nutrients and 6,994 factors from 10 to 100", "[retention]") {
    // Counted in the published CSV; release 6 documents 270 codes.
    CHECK(retentionTable().all().size() == 270);
    CHECK(retainedNutrients().size() == 26);
    int known = 0;
    int least = 100;
    int most = 0;
    forEachFactor([&](const Cell&, std::optional<int> percent) {
        if (!percent) return;
        ++known;
        least = std::min(least, *percent);
        most = std::max(most, *percent);
    });
    CHECK(known == 6994);
    CHECK(least == 10);
    CHECK(most == 100);
}

TEST_CASE("the 26 factors that the published file lost are unknown", "[retention]") {
    // 5005: 24 of its 26 rows have the date in place of the factor; 5009 has no row for alcohol,
    // 1154 none for choline.
    std::set<Cell> lost{{"5009", 221}, {"1154", 421}};
    for (const RetainedNutrient& nutrient : retainedNutrients())
        if (nutrient.number != 221 && nutrient.number != 421) lost.emplace("5005", nutrient.number);
    REQUIRE(lost.size() == 26);
    std::set<Cell> unknown;
    forEachFactor([&](const Cell& cell, std::optional<int> percent) {
        if (!percent) unknown.insert(cell);
    });
    CHECK(unknown == lost);
}

TEST_CASE("a lost factor stays unknown whichever way it is asked for", "[retention]") {
    CHECK(atCode("5009").percentOf(ALC) == std::nullopt);
    CHECK(atCode("5009").percentOfNutrient(221) == std::nullopt);
    CHECK(atCode("5009").percentOf(CHOLN) == 100);
    CHECK(atCode("1154").percentOf(CHOLN) == std::nullopt);
    CHECK(atCode("1154").percentOf(VITC) == 95);
    CHECK(atCode("5005").percentOf(CA) == std::nullopt);
    CHECK(atCode("5005").percentOfNutrient(392) == std::nullopt);
}

TEST_CASE("factors are those read by eye in the published file", "[retention]") {
    // 1,1,"CHEESE,BAKED",401,"Vitamin C, total ascorbic acid",65,Sep-75
    CHECK(atCode("0001").percentOf(VITC) == 65);
    // 1,1,"CHEESE,BAKED",418,Vitamin B-12,55,Sep-75
    CHECK(atCode("0001").percentOf(VITB12) == 55);
    // 105,1,"EGGS,HARD COOKED",404,Thiamin,85,Sep-75
    CHECK(atCode("0105").percentOf(THIA) == 85);
    // 158,9,"FRUITS,DRIED",401,"Vitamin C, total ascorbic acid",20,Sep-75
    CHECK(atCode("0158").percentOf(VITC) == 20);
    // 381,20,"PASTA,BOILED,DRAINED",404,Thiamin,65,Sep-75
    CHECK(atCode("0381").percentOf(THIA) == 65);
    // 431,20,"RICE,WHITE/BROWN,COOKED,DRAINED",306,"Potassium, K",85,Sep-75
    CHECK(atCode("0431").percentOf(K) == 85);
    // 501,16,"LEGUMES,CKD 15/20MIN,BOILED,DRAINED",432,"Folate, food",60,Sep-75
    CHECK(atCode("0501").percentOfNutrient(432) == 60);
    // 1152,13,"LIVER,SIMMERED,WO/DRIPPINGS",305,"Phosphorus, P",70,Sep-75
    CHECK(atCode("1152").percentOf(P) == 70);
    // 1706,10,"SAUSAGE,RAW,PORK,OTHER,CKD,W/DRIP",392,"Vitamin A, RE",85,Sep-75
    CHECK(atCode("1706").percentOfNutrient(392) == 85);
    // 1706,10,"SAUSAGE,RAW,PORK,OTHER,CKD,W/DRIP",318,"Vitamin A, IU",80,Sep-75
    CHECK(atCode("1706").percentOfNutrient(318) == 80);
    // 2701,15,"SHELLFISH,W/SHELL,BOILED",418,Vitamin B-12,60,Sep-75
    CHECK(atCode("2701").percentOf(VITB12) == 60);
    // 3004,11,"VEG,GREENS,BOILD,LITTLE WATER DRAIN",401,"Vitamin C, total ascorbic acid",60,Sep-75
    CHECK(atCode("3004").percentOf(VITC) == 60);
    // 3308,11,"POTATOES,BOILED(PARED)DRAIN",415,Vitamin B-6,95,Sep-75
    CHECK(atCode("3308").percentOf(VITB6A) == 95);
    // 3789,11,"VEG,OTHER,CKD FROM FRZN(BLD,DRAIND)",417,"Folate, total",70,Sep-75
    CHECK(atCode("3789").percentOf(FOL) == 70);
    // 5005,14,"ALC BEV,STIRRED,BKD/SIMMRD 30 MIN",221,"Alcohol, ethyl",35,Sep-75
    CHECK(atCode("5005").percentOf(ALC) == 35);
    // 5008,14,"ALC BEV,STIRRED,BKD/SIMMRD 2 HR",221,"Alcohol, ethyl",10,Sep-75
    CHECK(atCode("5008").percentOf(ALC) == 10);
}

TEST_CASE("codes and food groups have their leading zeros, descriptions are as published",
          "[retention]") {
    REQUIRE_FALSE(retentionTable().all().empty());
    CHECK(retentionTable().all().front().code == "0001");
    CHECK(retentionTable().all().back().code == "5010");
    CHECK(atCode("0001").foodGroup == "0100");
    CHECK(atCode("0001").description == "CHEESE,BAKED");
    CHECK(atCode("0433").foodGroup == "2000");
    CHECK(atCode("0433").description == "RICE,WHITE/BROWN,SAUTEED+SIMMERED");
    // Spelt so in the published file.
    CHECK(atCode("3701").description == "SWEETPOTAOTES,BAKED IN SKIN");
    CHECK(atCode("2302").description == "FINFISH,<5%FAT,BAKED W/DRIPPINGS");
    std::set<std::string> groups;
    for (const RetentionFactors& factors : retentionTable().all()) groups.insert(factors.foodGroup);
    CHECK(groups == std::set<std::string>{"0100", "0500", "0800", "0900", "1000", "1100", "1200",
                                          "1300", "1400", "1500", "1600", "1700", "2000"});
}

TEST_CASE("a code that is not published has no factors", "[retention]") {
    for (const char* code : {"", "1", "001", "0002", "5011", "9999", "00010", "x"})
        CHECK(retentionTable().find(code) == nullptr);
    for (const RetentionFactors& factors : retentionTable().all())
        CHECK(retentionTable().find(factors.code) == &factors);
}

TEST_CASE("seventeen of the 26 nutrients are components of ours, each once", "[retention]") {
    std::set<Component> ours;
    for (const RetainedNutrient& nutrient : retainedNutrients())
        if (nutrient.component) CHECK(ours.insert(*nutrient.component).second);
    CHECK(ours == std::set<Component>{ALC, CA, FE, MG, P, K, NA, ZN, CU, VITC, THIA, RIBF, NIA,
                                      VITB6A, FOL, VITB12, CHOLN});
    CHECK(std::ranges::is_sorted(retainedNutrients(), {}, &RetainedNutrient::number));
}

TEST_CASE("a component without published factors is told from one whose factor was lost",
          "[retention]") {
    CHECK(hasRetentionFactors(ALC));
    CHECK(hasRetentionFactors(CHOLN));
    for (const Component component :
         {PROCNT, FAT, VITA_RAE, FOLDFE, VITD, TOCPHA, MN, SE, PANTAC}) {
        CHECK_FALSE(hasRetentionFactors(component));
        CHECK(atCode("0001").percentOf(component) == std::nullopt);
    }
    CHECK(atCode("0001").percentOfNutrient(320) == std::nullopt);
}

TEST_CASE("nutrients that are no component of ours keep their published number", "[retention]") {
    std::set<int> numbers;
    for (const RetainedNutrient& nutrient : retainedNutrients())
        if (!nutrient.component) numbers.insert(nutrient.number);
    CHECK(numbers == std::set<int>{318, 321, 322, 334, 337, 338, 392, 431, 432});
    for (const int number : numbers) CHECK(atCode("0001").percentOfNutrient(number));
}

TEST_CASE("a broken text of factors is refused by its line", "[retention]") {
    const auto lineOf = [](const std::string& text) {
        const auto table = RetentionTable::read(text);
        CHECK((table || table.error().code == ErrorCode::WrongFormat));
        return table ? 0 : table.error().line;
    };
    CHECK(lineOf(withHead(factorLine("0001", "100") + factorLine("0003", "-"))) == 0);
    CHECK(lineOf("") == 1);
    CHECK(lineOf("code|food_group|description|221\n") == 1);
    CHECK(lineOf(withHead(factorLine("1", "100"))) == 3);
    CHECK(lineOf(withHead(factorLine("0001", "101"))) == 3);
    CHECK(lineOf(withHead(factorLine("0001", "100") + factorLine("0003", "Sep-75"))) == 4);
    CHECK(lineOf(withHead(factorLine("0001", "100") + factorLine("0003", "100|100"))) == 4);
    CHECK(lineOf(withHead(factorLine("0003", "100") + factorLine("0001", "100"))) == 4);
    CHECK(lineOf(withHead(factorLine("0003", "100") + factorLine("0003", "100"))) == 4);
}

}  // namespace nettare
