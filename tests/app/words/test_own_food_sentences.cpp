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

TEST_CASE("what is wrong with a photograph of a package is said with what to do",
          "[words][own][photo]") {
    CHECK(errorSentence(Error{ErrorCode::PhotoTooLarge}.with("most", "20")) ==
          "the photograph is larger than 20 MiB; choose a smaller one.");
    CHECK(errorSentence(Error{ErrorCode::PhotoNotAnImage}) ==
          "the photograph is neither a JPEG nor a PNG file; choose one of these.");
    CHECK(errorSentence(Error{ErrorCode::PhotoMissing}) ==
          "the kitchen does not have the photograph of this label; add it with --photo or with the "
          "next version.");
    CHECK(errorSentence(Error{ErrorCode::PhotoChanged}) ==
          "a photograph of a package is not the one that was kept; restore a backup.");
}

TEST_CASE("which label is meant and which none can be is said", "[words][own][label]") {
    CHECK(errorSentence(Error{ErrorCode::LabelFoodUnknown}.with("found", "yoghurt")) ==
          "this kitchen has no label called “yoghurt”; leave the name out to add a new one.");
    CHECK(errorSentence(Error{ErrorCode::LabelFoodAmbiguous}
                            .with("found", "thick")
                            .with("known", "“Thick cream”, “Thick yogurt”")) ==
          "several labels of this kitchen begin with “thick”: “Thick cream”, “Thick yogurt”; write "
          "one of them whole, or its UUID.");
    CHECK(errorSentence(Error{ErrorCode::NotALabel}.with("food", "Rye flour")) ==
          "Rye flour was typed from another source than a package; change it in the pantry.");
}

}  // namespace nettare
