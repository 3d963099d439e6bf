#include <catch2/catch.hpp>

#include "app/words/error_sentence.h"

namespace nettare {

TEST_CASE("what is wrong with an own food is said with what to do", "[words][own]") {
    CHECK(errorSentence(Error{ErrorCode::NotADate}.with("found", "May")) ==
          "“May” is no date; write it like 2026-05-16.");
    CHECK(errorSentence(Error{ErrorCode::OwnFoodNotFound}.with("found", "3f2b8c1e")) ==
          "this kitchen has no own food 3f2b8c1e; choose one from the pantry.");
    CHECK(errorSentence(Error{ErrorCode::OwnFoodIntoItself}.with("food", "Rye flour")) ==
          "“Rye flour” cannot be merged with itself or with a food that was merged into it; choose "
          "another one.");
    CHECK(errorSentence(Error{ErrorCode::OwnFoodMergedBefore}.with("food", "Rye flour")) ==
          "“Rye flour” was merged with another own food; part them first, or change the one that "
          "stayed.");
    CHECK(errorSentence(Error{ErrorCode::OwnFoodChanged}.with("found", "3f2b8c1e")) ==
          "the own food 3f2b8c1e is not what was saved; compare it with a backup.");
}

}  // namespace nettare
