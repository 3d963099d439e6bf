#include <catch2/catch.hpp>

#include <random>
#include <vector>

#include "app/gui/session/demo_kitchen.h"
#include "core/edit/line_edits.h"

namespace nettare {

namespace {

/// Types an amount letter by letter, as a field does.
void typeAmount(DraftSession& draft, std::string_view line, std::string_view text) {
    for (std::size_t length = 1; length <= text.size(); ++length) {
        const auto edit = setLineAmount(draft.document(), line, text.substr(0, length));
        REQUIRE(edit);
        REQUIRE(draft.apply(edit->edit));
    }
    draft.endTyping();
}

double energyOfBatch(const DraftSession& draft) {
    return (*(*draft.evaluation())[Basis::Batch])[Component::ENERC_KCAL].value;
}

std::string textOf(const DraftSession& draft) {
    return writeJson(draft.document());
}

/// The journal that the changes would leave, and a draft made anew from it.
struct Journal {
    StoredDraft stored;

    void take(DraftSession& draft) {
        const auto change = draft.takeJournalChange();
        if (!change) return;
        stored.edits.resize(change->keptEdits);
        stored.edits.insert(stored.edits.end(), change->edits.begin(), change->edits.end());
        stored.cursor = change->cursor;
    }
};

}  // namespace

TEST_CASE("Typing moves the figures at every letter and is one step of undo") {
    const auto session = skewersSession();
    DraftSession& draft = *session->draft();
    const std::string before = textOf(draft);
    const double energy = energyOfBatch(draft);
    typeAmount(draft, "garlic", "12");
    CHECK(energyOfBatch(draft) > energy);
    CHECK(draft.undoStack().count() == 1);
    draft.undoStack().undo();
    CHECK(textOf(draft) == before);
    CHECK(energyOfBatch(draft) == energy);
}

TEST_CASE("Typing that comes back to where it began leaves no step") {
    const auto session = skewersSession();
    DraftSession& draft = *session->draft();
    typeAmount(draft, "garlic", "3");
    REQUIRE(draft.undoStack().count() == 1);
    for (const char* text : {"24", "2"}) {
        const auto edit = setLineAmount(draft.document(), "salt", text);
        REQUIRE(draft.apply(edit->edit));
    }
    const auto back = setLineAmount(draft.document(), "salt", "1/4");
    REQUIRE(draft.apply(back->edit));
    CHECK(draft.undoStack().count() == 1);
}

TEST_CASE("An amount that nobody can read keeps the last figures and says where") {
    const auto session = skewersSession();
    DraftSession& draft = *session->draft();
    const double energy = energyOfBatch(draft);
    typeAmount(draft, "garlic", "about two");
    REQUIRE(draft.failure());
    CHECK(draft.failure()->pointer == "/lines/3/amount");
    CHECK(energyOfBatch(draft) == energy);
    draft.undoStack().undo();
    CHECK_FALSE(draft.failure());
}

TEST_CASE("The journal is told once and no more than is new") {
    const auto session = skewersSession();
    DraftSession& draft = *session->draft();
    CHECK_FALSE(draft.takeJournalChange());
    typeAmount(draft, "garlic", "3");
    typeAmount(draft, "salt", "1");
    auto change = draft.takeJournalChange();
    REQUIRE(change);
    CHECK(change->keptEdits == 0);
    CHECK(change->edits.size() == 2);
    CHECK(change->cursor == 2);
    CHECK_FALSE(draft.takeJournalChange());
    draft.undoStack().undo();
    change = draft.takeJournalChange();
    REQUIRE(change);
    CHECK(change->edits.empty());
    CHECK(change->keptEdits == 2);
    CHECK(change->cursor == 1);
    draft.journalNotWritten();
    change = draft.takeJournalChange();
    REQUIRE(change);
    CHECK(change->keptEdits == 0);
    CHECK(change->edits.size() == 2);
}

TEST_CASE("A draft made anew from its journal has text and undo history of the one that was lost") {
    const auto session = skewersSession();
    DraftSession& draft = *session->draft();
    Journal journal;
    journal.stored.base = draft.document();
    std::mt19937 random{20261126};
    const std::vector<std::string> lines{"prawns", "fennel", "garlic", "paprika", "salt"};
    for (int round = 0; round < 120; ++round) {
        const auto what = random() % 6;
        if (what == 0)
            draft.undoStack().undo();
        else if (what == 1)
            draft.undoStack().redo();
        else
            typeAmount(draft, lines[random() % lines.size()], std::to_string(1 + random() % 60));
        if (random() % 3 == 0) journal.take(draft);
    }
    journal.take(draft);
    DraftSession again{draft.recipe(), journal.stored, draft.closure(), false};
    CHECK(textOf(again) == textOf(draft));
    CHECK(again.undoStack().index() == draft.undoStack().index());
    REQUIRE(again.undoStack().count() == draft.undoStack().count());
    while (draft.undoStack().canUndo()) {
        draft.undoStack().undo();
        again.undoStack().undo();
        REQUIRE(textOf(again) == textOf(draft));
    }
    while (draft.undoStack().canRedo()) {
        draft.undoStack().redo();
        again.undoStack().redo();
        REQUIRE(textOf(again) == textOf(draft));
    }
}

TEST_CASE("What is typed in the stead of the last step leaves one step, and none where it began") {
    const auto session = skewersSession();
    DraftSession& draft = *session->draft();
    const Json before = draft.document();
    const auto typed = [&](const char* text) { return setLineAmount(before, "oil", text)->edit; };
    REQUIRE(draft.apply(typed("3 t")));
    REQUIRE(draft.retype(typed("3 tb"), before));
    REQUIRE(draft.retype(typed("2 tbsp"), before));
    CHECK(draft.undoStack().count() == 1);
    CHECK(textOf(draft) == writeJson(*applied(before, typed("2 tbsp"))));
    const auto change = draft.takeJournalChange();
    REQUIRE(change);
    CHECK(change->edits.size() == 1);
    draft.undoStack().undo();
    CHECK(textOf(draft) == writeJson(before));
    draft.undoStack().redo();
    REQUIRE(draft.retype(typed("3 tbsp"), before));
    CHECK(draft.undoStack().count() == 0);
    CHECK(textOf(draft) == writeJson(before));
}

TEST_CASE("Every undo step says what it takes back") {
    const auto session = skewersSession();
    DraftSession& draft = *session->draft();
    typeAmount(draft, "garlic", "3");
    CHECK(draft.undoStack().undoText() == QStringLiteral("amount of garlic"));
}

}  // namespace nettare
