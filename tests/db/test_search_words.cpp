#include <catch2/catch.hpp>

#include "db/search_words.h"

using namespace nettare;

using Words = std::vector<std::string>;

TEST_CASE("a text is cut into words without case and accents", "[search]") {
    CHECK(searchWords("Onion, RAW") == Words{"onion", "raw"});
    CHECK(searchWords("Gruyère jalapeño Käse") == Words{"gruyere", "jalapeno", "kase"});
    CHECK(searchWords("half-and-half") == Words{"half", "and", "half"});
    CHECK(searchWords("2% milk") == Words{"2", "milk"});
    CHECK(searchWords("5×3") == Words{"5", "3"});
    CHECK(searchWords(" ,*\" ").empty());
    CHECK(searchWords("\xC3").size() == 1);  // half a letter is not cut away
}

TEST_CASE("each word asks for its start, and for its other forms whole", "[search]") {
    CHECK(indexQuery({"leaf"}) == "(\"leaf\" * OR \"leaves\")");
    CHECK(indexQuery({"olive", "oil"}) == "(\"olive\" *) AND (\"oil\" *)");
    CHECK(indexQuery({"peas"}) == "(\"peas\" * OR \"pea\")");
}
