#include <catch2/catch.hpp>

#include "app/loading/kept_reference.h"

using namespace nettare;

TEST_CASE("a kept revision is named by its recipe's id and its number", "[closure]") {
    const auto reference = keptReference("barley-patties#12");
    REQUIRE(reference);
    CHECK(reference->recipe == "barley-patties");
    CHECK(reference->revision == 12);
    CHECK(reference->text() == "barley-patties#12");
}

TEST_CASE("what is no name of a kept revision is not taken for one", "[closure]") {
    for (const char* text :
         {"", "#", "patties", "patties.json", "patties#", "#2", "patties#0", "patties#02",
          "patties#-1", "patties#+1", "patties#2a", "patties#2#3", "Patties#2", "a b#2",
          "patties#99999999999", "patties #2", "../patties#1"})
        CHECK_FALSE(keptReference(text));
}
