#include <catch2/catch.hpp>

#include "random_changes.h"

using namespace nettare;

namespace {

/// The edits that were made, and the texts between them.
struct History {
    std::vector<Edit> edits;
    std::vector<std::string> texts;
    Json last;
};

History historyOf(const Json& start, std::mt19937::result_type seed, int count) {
    RandomChanges random{seed};
    History history{{}, {writeJson(start)}, start};
    for (int i = 0; i < count; ++i) {
        history.edits.push_back(random.next(history.last));
        history.last = *applied(history.last, history.edits.back());
        history.texts.push_back(writeJson(history.last));
    }
    return history;
}

}  // namespace

TEST_CASE("whatever was changed can be taken back and done again, byte for byte", "[edit]") {
    std::mt19937::result_type seed = 500;
    for (const Json& start : demoDocuments()) {
        const History history = historyOf(start, ++seed, 500);
        Json document = history.last;
        for (std::size_t i = history.edits.size(); i-- > 0;) {
            REQUIRE_FALSE(apply(inverseOf(history.edits[i]), document));
            REQUIRE(writeJson(document) == history.texts[i]);
        }
        CHECK(document == start);
        for (std::size_t i = 0; i < history.edits.size(); ++i)
            REQUIRE_FALSE(apply(history.edits[i], document));
        CHECK(writeJson(document) == history.texts.back());
    }
}

TEST_CASE("an edit comes back from the journal as it was", "[edit]") {
    for (const Json& start : demoDocuments())
        for (const Edit& edit : historyOf(start, 77, 200).edits) {
            const auto parsed = parseJson(writeJson(editJson(edit)));
            REQUIRE(parsed);
            const auto read = readEdit(*parsed);
            REQUIRE(read);
            CHECK(*read == edit);
            CHECK(inverseOf(inverseOf(*read)) == edit);
        }
}

TEST_CASE("an edit that does not fit in the middle leaves the document as it was", "[edit]") {
    for (const Json& start : demoDocuments()) {
        RandomChanges random{91};
        for (int i = 0; i < 200; ++i) {
            Edit edit = random.next(start);
            edit.changes.emplace_back(RemoveEntry{"/lines", 999, Json{}, false});
            Json document = start;
            const auto error = apply(edit, document);
            REQUIRE(error);
            CHECK(document == start);
        }
    }
}
