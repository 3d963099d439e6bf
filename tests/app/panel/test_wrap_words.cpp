#include <catch2/catch.hpp>

#include "app/panel/wrap_words.h"

using namespace nettare;

namespace {

constexpr PanelStyle kPlain{PanelFace::Regular, 1000, false};
constexpr PanelStyle kBold{PanelFace::Bold, 1000, false};

/// Every byte is 100 wide.
int hundredEach(std::string_view text, const PanelStyle&) {
    return static_cast<int>(text.size()) * 100;
}

std::vector<std::string> linesOf(std::string_view text, int rightCpt) {
    std::vector<std::string> lines;
    for (const PanelTextLine& line :
         wrapWords(panelWords(text, kPlain), {0, rightCpt, 0}, hundredEach)) {
        REQUIRE(line.size() == 1);
        CHECK(line.front().rightCpt <= rightCpt);
        lines.push_back(line.front().text);
    }
    return lines;
}

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("words of a panel wrap at blanks", "[panel]") {
    CHECK(linesOf("diet is what one eats", 2100) == Lines{"diet is what one eats"});
    CHECK(linesOf("diet is what one eats", 2099) == Lines{"diet is what one", "eats"});
    CHECK(linesOf("  diet   is ", 400) == Lines{"diet", "is"});
    CHECK(linesOf(" ", 400).empty());
}

TEST_CASE("a word wider than its line is broken between characters", "[panel]") {
    CHECK(linesOf("Fett Natriumchlorid", 600) == Lines{"Fett", "Natriu", "mchlor", "id"});
    // Two bytes each: an umlaut is never cut in two.
    CHECK(linesOf("ääääää", 500) == Lines{"ää", "ää", "ää"});
    CHECK(linesOf("abc", 100) == Lines{"a", "b", "c"});
}

TEST_CASE("a change of style begins a run one blank further on", "[panel]") {
    auto words = panelWords("Total Fat", kBold);
    words.push_back({"8g", kPlain});
    const auto lines = wrapWords(words, {300, 5000, 0}, hundredEach);
    REQUIRE(lines.size() == 1);
    REQUIRE(lines[0].size() == 2);
    CHECK(lines[0][0].text == "Total Fat");
    CHECK(lines[0][0].leftCpt == 300);
    CHECK(lines[0][0].rightCpt == 1200);
    CHECK(lines[0][1].text == "8g");
    CHECK(lines[0][1].leftCpt == 1300);
    CHECK(lines[0][1].rightCpt == 1500);
}

TEST_CASE("wrapped lines hang", "[panel]") {
    const auto lines = wrapWords(panelWords("one two three", kPlain), {100, 700, 50}, hundredEach);
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].front().leftCpt == 100);
    CHECK(lines[1].front().leftCpt == 150);
    CHECK(lines[2].front().leftCpt == 150);
}
