#include "db/import/sr28_measure.h"

#include <catch2/catch.hpp>

using namespace nettare;

namespace {

/// "unit | qualifier"
std::string read(std::string_view written, std::string_view food = "Onions, raw",
                 bool several = false) {
    const Sr28Measure measure = readSr28Measure(written, food, several);
    return measure.unit + " | " + measure.qualifier;
}

}  // namespace

TEST_CASE("volumes come under our words for them", "[import]") {
    CHECK(read("cup") == "cup | ");
    CHECK(read("Cup") == "cup | ");
    CHECK(read("cup, sliced") == "cup | sliced");
    CHECK(read("cup slices") == "cup | slices");
    CHECK(read("cup, quartered or chopped") == "cup | quartered or chopped");
    CHECK(read("tablespoon") == "tbsp | ");
    CHECK(read("tbsp chopped") == "tbsp | chopped");
    CHECK(read("fl oz") == "fl_oz | ");
    CHECK(read("cubic inch") == "cubic in | ");
    CHECK(read("oz, boneless") == "oz | boneless");
}

TEST_CASE("a size is that of the piece beside it, or of the food", "[import]") {
    CHECK(read("large") == "large onion | ");
    CHECK(read("medium (2-1/2\" dia)") == "medium onion | 2 1/2 in diameter");
    CHECK(read("large whole (3\" dia)", "Tomatoes, red, ripe, raw") ==
          "large tomato | 3 in diameter");
    CHECK(read("slice, large (1/4\" thick)") == "large slice | 1/4 in thick");
    CHECK(read("strip medium", "Carrots, raw") == "medium strip | ");
    CHECK(read("large", "Egg, whole, raw, fresh") == "large egg | ");
    CHECK(read("small", "Ice cream cones, rolled") == "small | ");
}

TEST_CASE("pieces are named in the singular where several are counted", "[import]") {
    CHECK(read("rings", "Onions, raw", true) == "ring | ");
    CHECK(read("package yields", "Gelatin", false) == "package yields | ");
    CHECK(read("thigh with skin") == "thigh | with skin");
    CHECK(read("chop, excluding refuse (yield from 1 raw chop)") ==
          "chop | excluding refuse, yield from 1 raw chop");
}

TEST_CASE("a measure without a word in front keeps its text", "[import]") {
    CHECK(read("(about 6)") == "(about 6) | ");
}
