#include <catch2/catch.hpp>

#include "core/label/printed_multiples.h"

#include <algorithm>
#include <random>
#include <vector>

using namespace nettare;

namespace {

constexpr std::int64_t kGrid = 240;  // every end of multiples 1 to 6 and every middle is on it

Decimal figureOf(const char* text) {
    return *Decimal::read(text);
}

std::vector<PrintedMultiple> onePieceOn(std::initializer_list<int> printed) {
    std::vector<PrintedMultiple> rows;
    for (const int figure : printed)
        rows.push_back({Fraction{static_cast<std::int64_t>(rows.size()) + 1}, Decimal{figure, 0}});
    return rows;
}

/// Whole number that `grid`/240 times `multiple` rounds to.
std::int64_t roundedWhole(std::int64_t grid, std::int64_t multiple, Ties ties) {
    const std::int64_t scaled = grid * multiple;
    const std::int64_t below = scaled / kGrid;
    const std::int64_t twice = 2 * (scaled % kGrid);
    if (twice != kGrid) return twice > kGrid ? below + 1 : below;
    if (ties == Ties::ToEven) return below + below % 2;
    return ties == Ties::Up ? below + 1 : below;
}

struct WholeMultiple {
    std::int64_t multiple;
    std::int64_t printed;
};

std::int64_t drawn(std::mt19937& random, std::int64_t below) {
    return static_cast<std::int64_t>(random()) % below;
}

/// One to four multiples of a figure on the grid, one print in eight off by one.
std::vector<WholeMultiple> randomMultiples(std::mt19937& random, std::int64_t grid, Ties ties) {
    std::vector<WholeMultiple> rows(1 + random() % 4U);
    for (WholeMultiple& row : rows) {
        row.multiple = 1 + drawn(random, 6);
        row.printed = roundedWhole(grid, row.multiple, ties);
        if (drawn(random, 8) != 0) continue;
        row.printed += drawn(random, 2) == 0 && row.printed > 0 ? -1 : 1;
    }
    return rows;
}

bool allPrintSo(const std::vector<WholeMultiple>& rows, std::int64_t grid, Ties ties) {
    for (const WholeMultiple& row : rows)
        if (roundedWhole(grid, row.multiple, ties) != row.printed) return false;
    return true;
}

/// Tries every grid point that could print so; answers how many the program judges otherwise.
int disagreements(const std::vector<WholeMultiple>& rows, std::int64_t around, Ties ties) {
    std::vector<PrintedMultiple> asked;
    asked.reserve(rows.size());
    for (const WholeMultiple& row : rows)
        asked.push_back({Fraction{row.multiple}, Decimal{row.printed, 0}});
    const auto figures = figuresPrintedSo(asked, Decimal{1, 0}, ties);
    int wrong = 0;
    bool any = false;
    for (std::int64_t grid = std::max<std::int64_t>(0, around - 2 * kGrid);
         grid <= around + 2 * kGrid; ++grid) {
        const bool prints = allPrintSo(rows, grid, ties);
        any = any || prints;
        if (prints != (figures && figures->contains(*Fraction::make(grid, kGrid)))) ++wrong;
    }
    return any == figures.has_value() ? wrong : wrong + 1;
}

}  // namespace

TEST_CASE("58.4 prints 58, 117 and 175 for one, two and three", "[label]") {
    const auto figures = figuresPrintedSo(onePieceOn({58, 117, 175}), Decimal{1, 0});
    REQUIRE(figures);
    CHECK(figures->low == Fraction::make(233, 4));   // 116.5/2, a tie that goes up
    CHECK(figures->high == Fraction::make(117, 2));  // 58.5 would print 59
    CHECK(figures->lowIncluded);
    CHECK_FALSE(figures->highIncluded);
    CHECK(figures->contains(*Fraction::make(584, 10)));
    CHECK_FALSE(figures->contains(*Fraction::make(58, 1)));
}

TEST_CASE("nothing prints 58, 117 and 176, and the third figure is named", "[label]") {
    const auto figures = figuresPrintedSo(onePieceOn({58, 117, 176}), Decimal{1, 0});
    REQUIRE_FALSE(figures);
    CHECK(figures.error().code == ErrorCode::NothingPrintsSo);
    CHECK(figures.error().value("multiple") == "3");
    CHECK(figures.error().value("printed") == "176");
    // Ties to even let exactly one figure through: 58.5 gives 58, 117 and 175.5, which goes to 176.
    const auto even = figuresPrintedSo(onePieceOn({58, 117, 176}), Decimal{1, 0}, Ties::ToEven);
    REQUIRE(even);
    CHECK(even->low == even->high);
    CHECK(even->contains(*Fraction::make(117, 2)));
}

TEST_CASE("the tie rule decides which ends belong to a print", "[label]") {
    const auto ends = [](int printed, Ties ties) {
        const auto figures = figuresPrintedSo(onePieceOn({printed}), Decimal{1, 0}, ties).value();
        return std::pair{figures.lowIncluded, figures.highIncluded};
    };
    CHECK(ends(3, Ties::Up) == std::pair{true, false});
    CHECK(ends(3, Ties::Down) == std::pair{false, true});
    CHECK(ends(3, Ties::ToEven) == std::pair{false, false});
    CHECK(ends(4, Ties::ToEven) == std::pair{true, true});
    CHECK(ends(0, Ties::Up) == std::pair{true, false});
    CHECK(figuresPrintedSo(onePieceOn({0}), Decimal{1, 0})->low == Fraction{0});
}

TEST_CASE("a multiple may be a fraction and a step a decimal", "[label]") {
    const std::vector<PrintedMultiple> rows{
        {*Fraction::make(1, 2), figureOf("1.5")},
        {*Fraction::make(2, 3), figureOf("2.0")},
    };
    const auto figures = figuresPrintedSo(rows, figureOf("0.5"));
    REQUIRE(figures);
    CHECK(figures->low == Fraction::make(21, 8));   // 1.75 x 3/2, above 1.25 x 2
    CHECK(figures->high == Fraction::make(27, 8));  // 2.25 x 3/2, below 1.75 x 2
    const std::vector<PrintedMultiple> offStep{{Fraction{1}, figureOf("1.7")}};
    CHECK(figuresPrintedSo(offStep, figureOf("0.5")).error().code == ErrorCode::NothingPrintsSo);
}

TEST_CASE("multiples that ask nothing are refused", "[label]") {
    const auto code = [](const std::vector<PrintedMultiple>& rows, Decimal step) {
        return figuresPrintedSo(rows, step).error().code;
    };
    CHECK(code({}, Decimal{1, 0}) == ErrorCode::TooFewItems);
    CHECK(code(onePieceOn({5}), Decimal{}) == ErrorCode::NotPositive);
    CHECK(code({{Fraction{0}, figureOf("5")}}, Decimal{1, 0}) == ErrorCode::NotPositive);
    CHECK(code({{Fraction{1}, figureOf("-5")}}, Decimal{1, 0}) == ErrorCode::NothingPrintsSo);
    const Fraction huge{9'000'000'000'000'000'000};
    CHECK(code({{huge, figureOf("5")}}, Decimal{1, 0}) == ErrorCode::OutOfRange);
}

TEST_CASE("an exact grid of figures agrees on which print so", "[label]") {
    std::mt19937 random{58117175};
    const Ties rules[] = {Ties::Up, Ties::Down, Ties::ToEven};
    int disagreeing = 0;
    for (int set = 0; set < 10'000; ++set) {
        const Ties ties = rules[random() % 3U];
        const auto grid = drawn(random, 20 * kGrid);
        const auto rows = randomMultiples(random, grid, ties);
        if (disagreements(rows, grid, ties) == 0) continue;
        ++disagreeing;
        UNSCOPED_INFO("set " << set << " of grid value " << grid << " disagrees");
    }
    CHECK(disagreeing == 0);
}
