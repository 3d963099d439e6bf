#include <sys/stat.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <filesystem>

#include "app/words/error_sentence.h"
#include "db/kitchen/kitchen.h"
#include "support/scratch_folder.h"
#include "without_rights.h"

using namespace nettare;

namespace {

constexpr auto kNoon = "2026-05-16T12:00:00+02:00";

Json dish(const std::string& title) {
    Json json = Json::object();
    json.set("title", Json{title});
    return json;
}

/// A folder with a kitchen of two recipes and two readings, closed.
class OneHome {
public:
    OneHome() {
        auto kitchen = Kitchen::create(path(), kNoon);
        REQUIRE(kitchen);
        REQUIRE(kitchen->addRecipe(dish("Leek soup"), kNoon));
        REQUIRE(kitchen->addRecipe(dish("Leek tart"), kNoon));
        for (const char* grams : {"340", "722"}) REQUIRE(kitchen->record(shown(grams)));
    }

    [[nodiscard]] std::string path() const { return folder_.path("home.nettare"); }
    [[nodiscard]] std::string folder() const { return folder_.path(""); }
    [[nodiscard]] Kitchen open(KitchenAccess access = KitchenAccess::Write) const {
        auto kitchen = Kitchen::open(path(), access);
        REQUIRE(kitchen);
        return std::move(*kitchen);
    }
    /// The sentence, without the path that it begins with.
    [[nodiscard]] std::string refusal(KitchenAccess access = KitchenAccess::Write) const {
        return sentenceOf(Kitchen::open(path(), access));
    }
    template <class T>
    [[nodiscard]] std::string sentenceOf(const Result<T>& result) const {
        REQUIRE_FALSE(result);
        const std::string sentence = errorSentence(result.error());
        REQUIRE(sentence.starts_with(path() + ": "));
        return sentence.substr(path().size() + 2);
    }
    void write(const std::string& bytes) const { std::ofstream{path(), std::ios::binary} << bytes; }
    /// Puts bytes in place of others in the file itself.
    void patch(std::size_t at, const std::string& bytes) const {
        std::string all = bytesOf(path());
        REQUIRE(all.size() > at + bytes.size());
        write(all.replace(at, bytes.size(), bytes));
    }
    /// The format in the header of the file (bytes 60 to 63, big end first).
    void setFormat(char format) const { patch(60, std::string{'\0', '\0', '\0', format}); }

    [[nodiscard]] static LedgerEntry shown(const std::string& grams) {
        LedgerEntry entry;
        entry.id = "00000000-0000-4000-8000-000000000" + grams;
        entry.at = kNoon;
        entry.indication = "bowl";
        entry.shown = *Decimal::read(grams);
        entry.unit = "g";
        entry.readability = Decimal{1, 0};
        entry.scale = "counter scale";
        return entry;
    }

private:
    ScratchFolder folder_{"kitchen-sentences"};
};

/// The sentence of an error that only a bad disk or another program can cause.
std::string sentence(ErrorCode code, const std::string& reason = "") {
    Error error = Error{code}.with("reason", reason);
    error.file = "home.nettare";
    return errorSentence(error);
}

}  // namespace

TEST_CASE("what is no kitchen is told from what is", "[words][kitchen]") {
    const OneHome home;
    home.write("");
    CHECK(home.refusal() ==
          "this file is empty, no kitchen; take a backup, or begin a new kitchen "
          "under another name.");
    home.write(std::string(5000, 'x'));
    CHECK(home.refusal() ==
          "this is some other file, no kitchen; give the path of a file that ends in .nettare.");
    std::filesystem::remove(home.path());
    CHECK(home.refusal() == "there is no kitchen here; check the path, or begin a new one.");
    std::filesystem::create_directory(home.path());
    CHECK(home.refusal() ==
          "this is a folder, no kitchen; give the path of a file that ends in .nettare.");
}

TEST_CASE("a database of another program is some other file", "[words][kitchen]") {
    const OneHome home;
    home.patch(68, "else");
    CHECK(home.refusal() ==
          "this is some other file, no kitchen; give the path of a file that ends in .nettare.");
}

TEST_CASE("a kitchen of another format says which, and what to do", "[words][kitchen]") {
    const OneHome home;
    home.setFormat(9);
    CHECK(home.refusal() ==
          "this kitchen has format 9, this program knows formats up to 6; update the program.");
    home.setFormat(2);
    CHECK(home.refusal(KitchenAccess::Read) ==
          "this kitchen has the older format 2 and is opened only to read, so it cannot be brought "
          "to format 6; open it once to write, or copy it to a folder of your own.");
}

TEST_CASE("a migration that fails says where and why", "[words][kitchen]") {
    const OneHome home;
    home.setFormat(2);
    const std::string before = bytesOf(home.path());
    CHECK(home.refusal() ==
          "this kitchen cannot be brought from format 2 to 6, 003_search.sql: table recipe_search "
          "already exists; it is as it was, so open it with the program that wrote it.");
    home.setFormat(6);
    CHECK(home.open().recipes()->size() == 2);
}

TEST_CASE("a damaged kitchen sends to the backup", "[words][kitchen]") {
    const OneHome home;
    home.patch(100, std::string(3000, '\x7f'));
    CHECK(home.refusal() ==
          "this kitchen is damaged, database disk image is malformed; keep the "
          "file and go on from a backup.");
}

TEST_CASE("the second window is told who has the first", "[words][kitchen]") {
    const OneHome home;
    const Kitchen first = home.open();
    Kitchen second = home.open();
    CHECK(second.heldBy().ends_with(", process " + std::to_string(getpid())));
    CHECK(home.sentenceOf(second.addRecipe(dish("Pie"), kNoon)) ==
          "this kitchen is in work elsewhere, " + second.heldBy() +
              "; close it there and open it again.");
    Kitchen reader = home.open(KitchenAccess::Read);
    CHECK(home.sentenceOf(reader.addRecipe(dish("Pie"), kNoon)) ==
          "this kitchen was opened only to read; open it to write.");
}

TEST_CASE("where nothing can be written, a kitchen says so", "[words][kitchen]") {
    const OneHome home;
    const std::string sentence =
        "no kitchen can be written here, the file or its folder does not allow it; choose a folder "
        "of your own.";
    const WithoutRights locked{home.folder()};
    Kitchen kitchen = home.open();
    CHECK(home.sentenceOf(kitchen.addRecipe(dish("Pie"), kNoon)) == sentence);
    const auto saved = kitchen.backUp(home.folder() + "copy.nettare");
    REQUIRE_FALSE(saved);
    CHECK(errorSentence(saved.error()) == home.folder() + "copy.nettare: " + sentence);
}

TEST_CASE("a kitchen that one may not read says so", "[words][kitchen]") {
    const OneHome home;
    REQUIRE(::chmod(home.path().c_str(), 0000) == 0);
    const WithoutRights locked{home.folder()};
    CHECK(home.refusal() ==
          "this kitchen cannot be read, the file or its folder does not allow it; "
          "ask its owner to.");
}

TEST_CASE("changes beside a kitchen that cannot be taken in are told", "[words][kitchen]") {
    const OneHome home;
    std::ofstream{home.path() + "-wal", std::ios::binary} << std::string(4152, 'x');
    const WithoutRights locked{home.folder()};
    CHECK(
        home.refusal() ==
        "this kitchen was left in the middle of work, and its last changes still lie in the files "
        "beside it; copy all of them to a folder of your own and open it there.");
}

TEST_CASE("a file that is there stays, and the sentence says so", "[words][kitchen]") {
    const OneHome home;
    const std::string sentence =
        "a file of this name is there and stays as it is; choose another name.";
    CHECK(home.sentenceOf(Kitchen::create(home.path(), kNoon)) == sentence);
    CHECK(home.sentenceOf(home.open().backUp(home.path())) == sentence);
}

TEST_CASE("what strangers left beside a kitchen is named", "[words][kitchen]") {
    const OneHome home;
    std::filesystem::create_directory(home.path() + "-journal");
    CHECK(home.refusal() ==
          "the file “home.nettare-journal” beside this kitchen belongs to something else; move it "
          "elsewhere and open the kitchen again.");
    std::filesystem::remove(home.path() + "-journal");
    const auto saved = home.open().backUp(home.path() + "-wal");
    REQUIRE_FALSE(saved);
    CHECK(errorSentence(saved.error()) ==
          home.path() +
              "-wal: a name that ends in -wal is kept for files beside a kitchen; choose another "
              "name.");
}

TEST_CASE("recipes and revisions that are not there are named", "[words][kitchen]") {
    const OneHome home;
    const Kitchen kitchen = home.open();
    CHECK(home.sentenceOf(kitchen.recipeNamed("pie")) ==
          "no recipe here is called “pie”; write its id or how its title begins.");
    CHECK(home.sentenceOf(kitchen.recipeNamed("leek")) ==
          "“leek” can be any of “Leek soup” (leek-soup), “Leek tart” (leek-tart); write more of "
          "the title, or the id.");
    CHECK(home.sentenceOf(kitchen.revision("leek-soup", 3)) ==
          "the recipe “leek-soup” has no revision 3; it has 0 of them.");
}

TEST_CASE("the ledger says what it has and has not", "[words][kitchen]") {
    const OneHome home;
    Kitchen kitchen = home.open();
    LedgerEntry entry = OneHome::shown("340");
    CHECK(home.sentenceOf(kitchen.record(entry)) ==
          "the ledger has an entry 00000000-0000-4000-8000-000000000340 already and stays as it "
          "is; record with a new id.");
    entry = OneHome::shown("111");
    entry.kind = EntryKind::Superseded;
    entry.refersTo = OneHome::shown("112").id;
    entry.reason = "slip of the hand";
    CHECK(home.sentenceOf(kitchen.record(entry)) ==
          "the ledger has no entry 00000000-0000-4000-8000-000000000112 that could be corrected; "
          "name one of its own.");
}

TEST_CASE("a bit that changed in the ledger is told with the number of its entry",
          "[words][kitchen]") {
    const OneHome home;
    const std::size_t at = bytesOf(home.path()).find(R"("shown":"722")");
    REQUIRE(at != std::string::npos);
    home.patch(at + 9, "3");
    const auto check = home.open().verify();
    REQUIRE(check->faults.size() == 1);
    CHECK(errorSentence(check->faults[0]) ==
          home.path() +
              ": ledger entry 2 is not what was recorded; compare it and those after it "
              "with a backup.");
}

TEST_CASE("what else a check finds has its sentence", "[words][kitchen]") {
    const auto in = [](ErrorCode code) {
        return errorSentence(Error{code}
                                 .with("recipe", "soup")
                                 .with("revision", "2")
                                 .with("indication", "bowl")
                                 .with("found", "ab12"));
    };
    CHECK(in(ErrorCode::RevisionChanged) ==
          "revision 2 of “soup” is not what was kept; compare it with a backup.");
    CHECK(in(ErrorCode::RevisionNotAsWeighed) ==
          "indication “bowl” in revision 2 of “soup” is not what the ledger shows; compare both "
          "with your notes.");
    CHECK(in(ErrorCode::RevisionFoodsChanged) ==
          "revision 2 of “soup” no longer pins the food ab12 that it uses; compare it with a "
          "backup.");
    CHECK(in(ErrorCode::LedgerShortened) ==
          "the ledger has lost what it held when revision 2 of “soup” was kept; compare it with a "
          "backup.");
    CHECK(in(ErrorCode::FoodVersionChanged) ==
          "the food version ab12 is not what was copied in; compare it with a backup.");
    CHECK(in(ErrorCode::DraftDamaged) ==
          "the draft of “soup” does not follow from its journal; go "
          "on from its newest revision or a backup.");
    CHECK(sentence(ErrorCode::PagesDamaged, "row 3 missing from index i") ==
          "home.nettare: the file is damaged, row 3 missing from index i; keep it and go on from a "
          "backup.");
}

TEST_CASE("a full, busy or failing disk is told, and that nothing was kept", "[words][kitchen]") {
    CHECK(sentence(ErrorCode::KitchenDiskFull) ==
          "home.nettare: the disk is full, and nothing of this change was kept; make room and try "
          "again.");
    CHECK(sentence(ErrorCode::KitchenBusy) ==
          "home.nettare: another program is busy in this kitchen; wait a moment and try again.");
    CHECK(sentence(ErrorCode::KitchenDiskFault, "disk I/O error") ==
          "home.nettare: the disk does not answer as it should, disk I/O error, and nothing of "
          "this change was kept; check the disk and try again.");
}
