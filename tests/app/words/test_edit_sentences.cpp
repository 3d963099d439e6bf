#include <catch2/catch.hpp>

#include "app/words/error_sentence.h"

using namespace nettare;

TEST_CASE("a damaged ledger entry is told by what is wrong with it", "[words]") {
    CHECK(errorSentence(Error{ErrorCode::NotAUuid}.with("found", "prawn-1").at("/id")) ==
          "/id: “prawn-1” is no UUID; write it in lower case like "
          "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2.");
    CHECK(errorSentence(Error{ErrorCode::NotAHash}.with("found", "abc").at("/previous")) ==
          "/previous: “abc” is no SHA-256 hash; write its 64 digits 0 to 9 and a to f.");
}

TEST_CASE("the last line says why it stays", "[words]") {
    CHECK(errorSentence(Error{ErrorCode::LastLine}.at("/lines/0")) ==
          "/lines/0: this is the only ingredient line, and a recipe needs one; change it, or add "
          "another first.");
}

TEST_CASE("an edit that does not fit says that nothing was changed", "[words]") {
    CHECK(errorSentence(Error{ErrorCode::EditDoesNotFit}.at("/lines/oil/amount")) ==
          "/lines/oil/amount: an edit does not fit, the draft has something else here; nothing was "
          "changed, undo later edits first or bring back a revision.");
}
