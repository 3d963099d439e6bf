#include "core/wording/read_line.h"

#include <catch2/catch.hpp>

#include "line_cases.h"

using namespace nettare;

TEST_CASE("every byte of a line is in exactly one part", "[lines]") {
    for (const std::string text : {"", " ", "2 cups  flour ", "((", "- \xff\xfe, 3½"}) {
        const LineReading reading = readLine(text);
        CHECK(writtenParts(reading) == text);
    }
}
