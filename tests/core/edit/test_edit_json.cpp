#include <catch2/catch.hpp>

#include "core/edit/edit.h"
#include "json_edit.h"

using namespace nettare;

namespace {

const Edit kEdit{EditKind::RemoveLine,
                 "olive oil",
                 {SetMember{"/title", Json{"a"}, {}}, InsertEntry{"/steps", 1, Json{true}, true},
                  RemoveEntry{"/lines", 2, Json{}, true}, MoveEntry{"/lines", 0, 3}}};

Error refusal(const char* place, const Json& value) {
    const auto read = readEdit(with(editJson(kEdit), place, value));
    REQUIRE_FALSE(read);
    CHECK(read.error().pointer == place);
    return read.error();
}

}  // namespace

TEST_CASE("an edit is written in the words of the journal", "[edit]") {
    CHECK(writeJson(editJson(kEdit)) ==
          R"({"changes":[{"before":"a","set":"/title"},)"
          R"({"at":1,"entry":true,"insert":"/steps","makes_list":true},)"
          R"({"at":2,"drops_list":true,"entry":null,"remove":"/lines"},)"
          R"({"from":0,"move":"/lines","to":3}],)"
          R"("kind":"remove line","subject":"olive oil"})");
}

TEST_CASE("every kind of edit has a word of its own", "[edit]") {
    for (int i = 0; i <= static_cast<int>(EditKind::BringBack); ++i) {
        const Edit edit{static_cast<EditKind>(i), "", {}};
        CHECK_FALSE(nameOf(edit.kind).empty());
        const auto read = readEdit(editJson(edit));
        REQUIRE(read);
        CHECK(read->kind == edit.kind);
    }
}

TEST_CASE("a damaged edit is refused at its place", "[edit]") {
    CHECK(refusal("/kind", Json{"cook"}).code == ErrorCode::NotOneOf);
    CHECK(refusal("/changes/0/set", Json{1.0}).code == ErrorCode::WrongKind);
    CHECK(refusal("/changes/1/at", Json{-1.0}).code == ErrorCode::OutOfRange);
    CHECK(refusal("/changes/1/at", Json{"1"}).code == ErrorCode::WrongKind);
    CHECK(refusal("/changes/3/from", Json{0.5}).code == ErrorCode::OutOfRange);
    CHECK(refusal("/changes/3/how", Json{"far"}).code == ErrorCode::UnknownKey);
    CHECK(refusal("/changes/2", Json::object()).code == ErrorCode::OneOfNeeded);
    CHECK(refusal("/changes", Json{"none"}).code == ErrorCode::WrongKind);
    CHECK_FALSE(readEdit(without(editJson(kEdit), "/changes/1/entry")));
}
