#include "core/wording/write_line.h"

#include <catch2/catch.hpp>

#include <random>

#include "core/wording/read_line.h"
#include "line_cases.h"

using namespace nettare;

namespace {

std::vector<std::string> knownLines() {
    std::vector<std::string> lines;
    for (const LineCase& row :
         lineCasesIn(std::string{NETTARE_TEST_DATA} + "/lines/development.txt"))
        lines.push_back(row.text);
    return lines;
}

/// Cuts, doubles, changes and joins stretches of known lines.
class LineMutations {
public:
    explicit LineMutations(std::vector<std::string> lines) : lines_{std::move(lines)} {}

    std::string next() {
        std::string text = one();
        const std::size_t changes = 1 + below(4);
        for (std::size_t i = 0; i < changes; ++i) change(text);
        return text;
    }

private:
    std::size_t below(std::size_t limit) { return limit == 0 ? 0 : random_() % limit; }
    const std::string& one() { return lines_[below(lines_.size())]; }

    void change(std::string& text) {
        const std::size_t at = below(text.size() + 1);
        switch (below(5)) {
            case 0:
                text.erase(at, below(6));
                break;
            case 1:
                text.insert(at, text.substr(below(text.size() + 1), below(12)));
                break;
            case 2:
                text.insert(at, one().substr(0, below(20)));
                break;
            case 3:
                if (at < text.size()) text[at] = static_cast<char>(random_() & 0xFFU);
                break;
            default:
                text.insert(at, 1, std::string_view{" ,()-/1x.or"}[below(11)]);
        }
    }

    std::vector<std::string> lines_;
    std::mt19937 random_{20261126};
};

}  // namespace

TEST_CASE("a reading is written in one order", "[lines]") {
    const auto written = [](const char* text) { return writeLine(readLine(text)); };
    CHECK(written("1½ lb. beef, cut up") == "1 1/2 lb beef, cut up");
    CHECK(written("a 400g tin of lentils") == "1 (400 g) tin lentils");
    CHECK(written("2 finely chopped garlic cloves") == "2 cloves garlic, finely chopped");
    CHECK(written("juice of half a lemon") == "juice of 1/2 lemon");
    CHECK(written("flour, 120 g/4 oz") == "120 g flour (4 oz)");
    CHECK(written("a few sprigs of tarragon") == "a few sprigs tarragon");
    CHECK(written("1 cup (120 g) flour (optional)") == "1 cup flour (120 g) (optional)");
}

TEST_CASE("the canonical order says all that a known line says", "[lines]") {
    for (const std::string& text : knownLines()) {
        CAPTURE(text);
        const LineReading reading = readLine(text);
        CHECK(sameFields(readLine(canonicalLine(reading)), reading));
    }
}

TEST_CASE("a reading that was changed is written with its change", "[lines]") {
    LineReading reading = readLine("2 cups flour, sifted");
    reading.amount = Amount{Fraction{3}, Fraction{3}, "3"};
    CHECK(writeLine(reading) == "3 cup flour, sifted");
}

TEST_CASE("20,000 spoilt lines lose no byte and are read as they are written", "[lines]") {
    LineMutations mutations{knownLines()};
    std::size_t wrong = 0;
    for (int i = 0; i < 20000; ++i) {
        const std::string text = mutations.next();
        const LineReading reading = readLine(text);
        const bool law =
            writtenParts(reading) == text && sameFields(readLine(writeLine(reading)), reading);
        if (law) continue;
        ++wrong;
        UNSCOPED_INFO(text);
    }
    CHECK(wrong == 0);
}
