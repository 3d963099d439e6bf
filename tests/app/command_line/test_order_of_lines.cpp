#include <catch2/catch.hpp>

#include "command_line/scratch_kitchen.h"
#include "core/support/json.h"
#include "shuffled_lines.h"

using namespace nettare;

TEST_CASE("the order of an example's lines changes no byte of its figures", "[command_line]") {
    const ScratchKitchen kitchen;
    for (const std::string& text : {skewers(), patties()})
        for (const char* basis : {"piece", "portion", "100g", "batch"}) {
            kitchen.write("written.json", text);
            const Outcome written = run({"figures", "--json", "--per", basis, "written.json"});
            REQUIRE(written.code == 0);
            for (std::uint32_t seed = 1; seed <= 20; ++seed) {
                const Json shuffled = withLinesShuffled(*parseJson(text), seed);
                kitchen.write("shuffled.json", writeJson(shuffled));
                CAPTURE(basis, seed);
                REQUIRE(run({"figures", "--json", "--per", basis, "shuffled.json"}).out ==
                        written.out);
            }
        }
}
