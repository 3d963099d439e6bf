// Works in a kitchen until it is killed. Before each call it says what it is about to do, and after
// the call returned, "ok": test_kills reads both.
//   work_in_kitchen KITCHEN SEED

#include <unistd.h>

#include <charconv>
#include <random>
#include <string>
#include <string_view>

#include "kitchen/sample_dishes.h"

using namespace nettare;

namespace {

void say(const std::string& line) {
    const std::string whole = line + "\n";
    if (::write(STDOUT_FILENO, whole.data(), whole.size()) != static_cast<ssize_t>(whole.size()))
        ::_exit(3);
}

/// Ends the program where a call that should work did not.
template <class T>
T must(Result<T> answer) {
    if (answer) {
        if constexpr (std::is_void_v<T>)
            return;
        else
            return std::move(*answer);
    }
    say("refused " + std::to_string(static_cast<int>(answer.error().code)));
    ::_exit(4);
}

/// The kitchen and what is in it by now.
struct Work {
    Kitchen kitchen;
    std::string recipe;
    std::size_t edits = 0, cursor = 0, readings = 0, revisions = 0;

    [[nodiscard]] std::string title(std::size_t edit) const { return "t" + std::to_string(edit); }

    void weigh() {
        say("ledger " + std::to_string(readings + 1));
        must(kitchen.record(shown(static_cast<int>(readings + 1), std::to_string(readings))));
        say("ok");
        ++readings;
    }
    void moveTo(const JournalChange& change) {
        edits = change.keptEdits + change.edits.size();
        cursor = change.cursor;
        say("draft " + std::to_string(edits) + " " + std::to_string(cursor));
        must(kitchen.journal(recipe, change));
        say("ok");
    }
    void type() { moveTo(added(cursor, {retitled(title(cursor), title(cursor + 1))})); }
    void undo() { moveTo(cursorAt(edits, cursor > 0 ? cursor - 1 : 0)); }
    void redo() { moveTo(cursorAt(edits, cursor < edits ? cursor + 1 : cursor)); }
    void keep() {
        say("revision " + std::to_string(revisions + 1));
        must(kitchen.keep(recipe, toKeep(dish(title(cursor)), "kept")));
        say("ok");
        ++revisions;
    }
};

Work begin(const std::string& path) {
    Work work{must(Kitchen::open(path, KitchenAccess::Write)), "t0"};
    const StoredDraft draft = must(work.kitchen.draft(work.recipe));
    work.edits = draft.edits.size();
    work.cursor = draft.cursor;
    work.readings = must(work.kitchen.ledger()).size();
    work.revisions = must(work.kitchen.revisions(work.recipe)).size();
    return work;
}

void goOn(Work& work, std::mt19937& random) {
    switch (random() % 8) {
        case 0:
        case 1:
        case 2:
            return work.weigh();
        case 3:
        case 4:
            return work.type();
        case 5:
            return work.undo();
        case 6:
            return work.redo();
        default:
            return work.keep();
    }
}

}  // namespace

int main(int count, char** arguments) {
    if (count != 3) return 2;
    const std::string_view seed = arguments[2];
    unsigned number = 0;
    std::from_chars(seed.data(), seed.data() + seed.size(), number);
    std::mt19937 random{number};
    Work work = begin(arguments[1]);
    say("ready");
    for (;;) goOn(work, random);
}
