#include "core/edit/edit.h"

#include <catch2/catch.hpp>

#include "json_edit.h"

using namespace nettare;

namespace {

const Json kDish =
    *parseJson(R"({"title":"Dish","lines":[{"id":"oil","amount":"3"},{"id":"2","amount":"1"}],)"
               R"("steps":[{"text":"Stir."},{"text":"Wait."}],"a/b":{"c~d":"deep"}})");

std::string after(const Change& change) {
    const auto document = applied(kDish, {EditKind::Note, "", {change}});
    return document ? writeJson(*document) : "does not fit at " + document.error().pointer;
}

Edit typed(const std::string& from, const std::string& to) {
    return {EditKind::Amount, "oil", {SetMember{"/lines/oil/amount", Json{from}, Json{to}}}};
}

}  // namespace

TEST_CASE("an entry goes by its id, and by its index where it has none", "[edit]") {
    const auto changed = [](const std::string& place, const char* before) {
        return after(SetMember{place, Json{before}, Json{"X"}});
    };
    CHECK(changed("/lines/oil/amount", "3") ==
          writeJson(with(kDish, "/lines/0/amount", Json{"X"})));
    CHECK(changed("/lines/2/amount", "1") == writeJson(with(kDish, "/lines/1/amount", Json{"X"})));
    CHECK(changed("/steps/1/text", "Wait.") == writeJson(with(kDish, "/steps/1/text", Json{"X"})));
    CHECK_THAT(changed("/a~1b/c~0d", "deep"), Catch::Contains(R"("a/b":{"c~d":"X"})"));
    // The line at index 0 is called oil, and there is no step of the number 01.
    CHECK(changed("/lines/0/amount", "3") == "does not fit at /lines/0/amount");
    CHECK(changed("/steps/01/text", "Wait.") == "does not fit at /steps/01/text");
    CHECK(changed("/steps/2/text", "Wait.") == "does not fit at /steps/2/text");
    CHECK(changed("title", "Dish") == "does not fit at title");
}

TEST_CASE("an edit fits only where what it changes is what it was made for", "[edit]") {
    CHECK(after(SetMember{"/title", Json{"Stew"}, Json{"X"}}) == "does not fit at /title");
    CHECK(after(SetMember{"/title", {}, Json{"X"}}) == "does not fit at /title");
    CHECK(after(SetMember{"/note", Json{"old"}, {}}) == "does not fit at /note");
    CHECK(after(SetMember{"/lines/salt/amount", {}, Json{"1"}}) ==
          "does not fit at /lines/salt/amount");
    CHECK(after(RemoveEntry{"/steps", 0, jsonOf(R"({"text":"Wait."})"), false}) ==
          "does not fit at /steps");
    CHECK(after(RemoveEntry{"/steps", 2, Json{}, false}) == "does not fit at /steps");
    CHECK(after(RemoveEntry{"/steps", 0, jsonOf(R"({"text":"Stir."})"), true}) ==
          "does not fit at /steps");
    CHECK(after(InsertEntry{"/steps", 3, Json{}, false}) == "does not fit at /steps");
    CHECK(after(InsertEntry{"/steps", 0, Json{}, true}) == "does not fit at /steps");
    CHECK(after(InsertEntry{"/targets", 0, Json{}, false}) == "does not fit at /targets");
    CHECK(after(InsertEntry{"", 0, Json{}, true}) == "does not fit at ");
    CHECK(after(MoveEntry{"/steps", 0, 2}) == "does not fit at /steps");
    CHECK(after(MoveEntry{"/title", 0, 0}) == "does not fit at /title");
}

TEST_CASE("the id of an entry stays, since places go by it", "[edit]") {
    CHECK(after(SetMember{"/lines/oil/id", Json{"oil"}, Json{"fat"}}) ==
          "does not fit at /lines/oil/id");
    CHECK(after(SetMember{"/steps/0/id", {}, Json{"stir"}}) == "does not fit at /steps/0/id");
    CHECK(after(InsertEntry{"/steps/0/id", 0, Json{}, true}) == "does not fit at /steps/0/id");
}

TEST_CASE("an entry moves to the index that it has afterwards", "[edit]") {
    const Json list = jsonOf(R"({"l":["a","b","c","d"]})");
    const auto moved = [&](std::size_t from, std::size_t to) {
        return writeJson(*applied(list, {EditKind::MoveLine, "", {MoveEntry{"/l", from, to}}}));
    };
    CHECK(moved(0, 2) == R"({"l":["b","c","a","d"]})");
    CHECK(moved(3, 0) == R"({"l":["d","a","b","c"]})");
    CHECK(moved(1, 1) == R"({"l":["a","b","c","d"]})");
}

TEST_CASE("a list that an edit made is gone when the edit is undone", "[edit]") {
    const Edit edit{EditKind::Target, "", {InsertEntry{"/targets", 0, Json{"t"}, true}}};
    Json document = *applied(kDish, edit);
    CHECK(document.find("targets") != nullptr);
    REQUIRE_FALSE(apply(inverseOf(edit), document));
    CHECK(document == kDish);
}

TEST_CASE("the whole document can be set, and only against the whole one before", "[edit]") {
    const Json other = jsonOf(R"({"title":"Other"})");
    CHECK(after(SetMember{"", kDish, other}) == writeJson(other));
    CHECK(after(SetMember{"", other, kDish}) == "does not fit at ");
    CHECK(after(SetMember{"", kDish, {}}) == "does not fit at ");
}

TEST_CASE("typing on in one field is one edit", "[edit]") {
    const auto both = merged(typed("3", "3 t"), typed("3 t", "3 tsp"));
    REQUIRE(both);
    CHECK(*both == typed("3", "3 tsp"));
    CHECK_FALSE(merged(typed("3", "4"), typed("5", "6")));
    Edit other = typed("4", "5");
    other.subject = "salt";
    CHECK_FALSE(merged(typed("3", "4"), other));
    other = typed("4", "5");
    other.kind = EditKind::Way;
    CHECK_FALSE(merged(typed("3", "4"), other));
    other = {EditKind::Amount, "oil", {SetMember{"/lines/oil/unit", Json{"g"}, Json{"kg"}}}};
    CHECK_FALSE(merged(typed("3", "4"), other));
    const Edit move{EditKind::Amount, "oil", {MoveEntry{"/lines", 0, 1}}};
    CHECK_FALSE(merged(move, move));
}

TEST_CASE("typing that changes the unit on the way is still one edit", "[edit]") {
    Edit first = typed("3", "4");
    first.changes.emplace_back(SetMember{"/lines/oil/weighed_for", {}, Json{"3"}});
    Edit second = typed("4", "4");
    second.changes.emplace_back(SetMember{"/lines/oil/unit", {}, Json{"g"}});
    const auto both = merged(first, second);
    REQUIRE(both);
    CHECK(both->changes.size() == 3);
    const Json once = *applied(kDish, *both);
    CHECK(once == *applied(*applied(kDish, first), second));
    CHECK(*applied(once, inverseOf(*both)) == kDish);
}

TEST_CASE("an edit back to the same text changes nothing", "[edit]") {
    CHECK(changesNothing(typed("3", "3")));
    CHECK(changesNothing({EditKind::MoveLine, "", {MoveEntry{"/lines", 1, 1}}}));
    CHECK_FALSE(changesNothing(typed("3", "4")));
    CHECK_FALSE(changesNothing({EditKind::AddStep, "", {InsertEntry{"/steps", 0, Json{}, false}}}));
}
