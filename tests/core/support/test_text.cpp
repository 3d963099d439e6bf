#include <catch2/catch.hpp>

#include "core/support/text.h"

using namespace nettare;

using Pieces = std::vector<std::string_view>;

TEST_CASE("white space is taken from both ends only", "[support]") {
    CHECK(trimmed("  2 cups\t\n") == "2 cups");
    CHECK(trimmed("salt") == "salt");
    CHECK(trimmed(" \r\n\f\v").empty());
    CHECK(trimmed("").empty());
    CHECK(trimmed("\u00a0salt") == "\u00a0salt");
}

TEST_CASE("lower case is for ASCII letters; every other byte stays", "[support]") {
    CHECK(lowerAscii("Crème FRAÎCHE 30 %") == "crème fraÎche 30 %");
    CHECK(lowerAscii("@[`{") == "@[`{");
    CHECK(lowerAscii("").empty());
}

TEST_CASE("splitting keeps the empty pieces", "[support]") {
    CHECK(split("a,b,,c", ',') == Pieces{"a", "b", "", "c"});
    CHECK(split(",", ',') == Pieces{"", ""});
    CHECK(split("", ',') == Pieces{""});
    CHECK(split("1/2", '/') == Pieces{"1", "2"});
}

TEST_CASE("words are what stands between white space", "[support]") {
    CHECK(words("  3  tbsp\tolive oil\n") == Pieces{"3", "tbsp", "olive", "oil"});
    CHECK(words(" \n ").empty());
    CHECK(words("salt") == Pieces{"salt"});
}

TEST_CASE("code points are counted, not bytes", "[support]") {
    CHECK(codePoints("½ cup") == 5);
    CHECK(codePoints("crème") == 5);
    CHECK(codePoints("🍋") == 1);
    CHECK(codePoints("") == 0);
}

TEST_CASE("well-formed UTF-8 is accepted whole", "[support]") {
    // RFC 3629, section 4: the first and the last sequence of each length.
    for (const std::string_view good :
         {"\x7f", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80",
          "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"}) {
        CAPTURE(good);
        CHECK(utf8Prefix(good) == good.size());
    }
    CHECK(utf8Prefix(std::string_view{"\0", 1}) == 1);
    CHECK(utf8Prefix("") == 0);
}

TEST_CASE("ill-formed UTF-8 is stopped at its first byte", "[support]") {
    // RFC 3629, sections 3 and 4: stray and missing continuations, overlong forms, surrogates and
    // numbers beyond U+10FFFF are no UTF-8.
    for (const std::string_view bad :
         {"\x80", "\xBF", "\xC0\xAF", "\xC1\xBF", "\xC3", "\xC3(", "\xE0\x9F\xBF", "\xE2\x82",
          "\xE2(\xA1", "\xED\xA0\x80", "\xED\xBF\xBF", "\xF0\x8F\xBF\xBF", "\xF0\x9F\x8D",
          "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFE", "\xFF"}) {
        CAPTURE(bad);
        CHECK(utf8Prefix(bad) == 0);
        CHECK(utf8Prefix("salt" + std::string{bad}) == 4);
    }
}

TEST_CASE("a quoted text is cut between characters and stays one line", "[support]") {
    CHECK(shortened("crème brûlée", 12) == "crème brûlée");
    CHECK(shortened("crème brûlée", 5) == "crème…");
    CHECK(shortened("½½½", 2) == "½½…");
    CHECK(shortened("two\nlines\tand\x7f", 60) == "two lines and ");
    CHECK(shortened("salt", 0) == "…");
    CHECK(shortened("a\u202eb\u2028c\u009bd\u2066e", 60) == "a b c d e");
    CHECK(shortened("a\xC3", 60) == "a\uFFFD");
    CHECK(shortened("\xFFz", 60) == "\uFFFDz");
    CHECK(shortened("", 0).empty());
}

TEST_CASE("a plain line hides, breaks and turns nothing", "[support]") {
    // The Unicode Standard, section 23.2: bidirectional ordering controls; C0, DEL and C1 controls.
    for (const std::string_view good : {"", "crème", "עוגת דבש", "<b>&amp;", "½ \u00a0 – \u200f"})
        CHECK(isPlainLine(good));
    for (const std::string_view bad : {"a\nb", "\x7f", "\u0080", "\u009f", "\u2028", "\u2029",
                                       "\u202a", "\u202e", "\u2066", "\u2069", "\xff"})
        CHECK_FALSE(isPlainLine(bad));
}

TEST_CASE("every occurrence is replaced, and the replacement is not read again", "[support]") {
    CHECK(replaced("1 – 2 – 3", "–", "-") == "1 - 2 - 3");
    CHECK(replaced("aaa", "a", "aa") == "aaaaaa");
    CHECK(replaced("salt", "pepper", "x") == "salt");
    CHECK(replaced("salt", "salt", "").empty());
    CHECK(replaced("", "a", "b").empty());
}
