#include <array>
#include <catch2/catch.hpp>
#include <cstdio>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

namespace {

/// The first word that the program sha256sum (GNU coreutils) says of a file.
std::string sha256sumOf(const std::string& path) {
    std::FILE* answer = popen(("sha256sum '" + path + "'").c_str(), "r");
    REQUIRE(answer != nullptr);
    std::array<char, 65> digits{};
    const std::size_t read = std::fread(digits.data(), 1, 64, answer);
    REQUIRE(pclose(answer) == 0);
    return {digits.data(), read};
}

}  // namespace

TEST_CASE("sha256sum finds the hash of every document that was kept", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    std::vector<Json> documents{dish("soup"), dish("Crème \"brûlée\"\n\\ \u2028 Борщ 🍲"),
                                dish(std::string(70'000, 'x'))};
    for (const char* name : {"barley-beetroot-patties", "prawn-fennel-skewers"})
        documents.push_back(
            *parseJson(bytesOf(NETTARE_RESOURCES "/demo/" + std::string{name} + ".json")));
    for (const Json& document : documents) {
        const std::string id = *kitchen.addRecipe(document, kNoon);
        REQUIRE(kitchen.keep(id, toKeep(document, "")));
        one.folder().write("document.json", writeJson(document));
        const std::string sum = sha256sumOf(one.folder().path("document.json"));
        CHECK(sum.size() == 64);
        CHECK(kitchen.revisions(id)->front().hash == sum);
    }
}

TEST_CASE("sha256sum finds the hashes of the ledger and of food versions", "[kitchen]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    REQUIRE(kitchen.copyIn({rowOf("1", 31)}));
    REQUIRE(kitchen.record(shown(1, "340")));
    const ChainedEntry second = *kitchen.record(shown(2, "12.50"));
    one.folder().write("entry.json", writeJson(entryJson(second.entry, 2, second.previous)));
    CHECK(sha256sumOf(one.folder().path("entry.json")) == second.hash);
    one.folder().write("food.json", askSql(one.path(), "SELECT food FROM food_version"));
    CHECK(sha256sumOf(one.folder().path("food.json")) ==
          askSql(one.path(), "SELECT hash FROM food_version"));
}
