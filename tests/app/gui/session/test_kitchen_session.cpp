#include <catch2/catch.hpp>

#include <QTemporaryDir>

#include "app/gui/session/demo_kitchen.h"
#include "app/session/now.h"
#include "core/edit/line_edits.h"
#include "support/run_tool.h"

namespace nettare {

namespace {

void setAmount(KitchenSession& session, std::string_view line, std::string_view text) {
    const auto edit = setLineAmount(session.draft()->document(), line, text);
    REQUIRE(edit);
    REQUIRE(session.draft()->apply(edit->edit));
    session.draft()->endTyping();
}

std::string text(const KitchenSession& session) {
    return writeJson(session.draft()->document());
}

/// The errors that the session reports while this lives.
class Reported {
public:
    explicit Reported(KitchenSession& session) {
        QObject::connect(&session, &KitchenSession::failed, &session,
                         [this](const Error& error) { codes.push_back(error.code); });
    }
    std::vector<ErrorCode> codes;
};

}  // namespace

TEST_CASE("A change reaches the file, and another window finds it there with its history") {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("k.nettare"));
    const auto session = skewersSession();
    session->keepKitchenAs(path);
    rest(*session);
    CHECK_FALSE(session->isSample());
    CHECK(session->path() == path);
    setAmount(*session, "garlic", "3");
    CHECK(session->saveState() == SaveState::Pending);
    rest(*session);
    CHECK(session->saveState() == SaveState::Saved);
    CHECK(session->savedSecondsAgo());

    auto other = Kitchen::open(path.toStdString(), KitchenAccess::Write);
    REQUIRE(other);
    CHECK_FALSE(other->writable());
    CHECK_FALSE(other->heldBy().empty());
    const auto draft = other->draft(session->draft()->recipe().toStdString());
    REQUIRE(draft);
    REQUIRE(draft->edits.size() == 1);
    CHECK(draft->cursor == 1);
    REQUIRE(applied(draft->base, draft->edits.front()));
    CHECK(writeJson(*applied(draft->base, draft->edits.front())) == text(*session));
}

TEST_CASE("Kept revisions are numbered, listed and recomputed to the same figures") {
    const auto session = skewersSession();
    Reported reported{*session};
    session->keep(QStringLiteral(" as cooked "));
    setAmount(*session, "garlic", "4");
    session->keep(QStringLiteral("more garlic"));
    rest(*session);
    CHECK(reported.codes.empty());
    REQUIRE(session->revisions().size() == 2);
    CHECK(session->draft()->baseRevision() == 2);
    std::vector<OpenedRevision> opened;
    session->openRevision(2, [&](OpenedRevision one) { opened.push_back(std::move(one)); });
    rest(*session);
    REQUIRE(opened.size() == 1);
    CHECK(opened[0].kept.summary.note == "more garlic");
    CHECK(opened[0].kept.summary.parent == 1);
    CHECK(writeJson(opened[0].kept.document) == text(*session));
    const auto energy = [](const Evaluation& evaluation) {
        return (*evaluation[Basis::Portion])[Component::ENERC_KCAL].value;
    };
    CHECK(energy(*opened[0].evaluation) == energy(*session->draft()->evaluation()));
}

TEST_CASE("A revision that is brought back is a new one, and undo gives the draft back") {
    const auto session = skewersSession();
    session->keep(QStringLiteral("first"));
    const std::string first = text(*session);
    setAmount(*session, "garlic", "4");
    const std::string second = text(*session);
    session->keep(QStringLiteral("second"));
    rest(*session);
    session->bringBack(1);
    rest(*session);
    CHECK(text(*session) == first);
    REQUIRE(session->revisions().size() == 3);
    CHECK(session->draft()->baseRevision() == 3);
    session->draft()->undoStack().undo();
    CHECK(text(*session) == second);
}

TEST_CASE("A draft without figures is not kept, and the session says why") {
    const auto session = skewersSession();
    Reported reported{*session};
    setAmount(*session, "garlic", "about two");
    session->keep(QStringLiteral("no"));
    rest(*session);
    CHECK(session->revisions().empty());
    REQUIRE(reported.codes.size() == 1);
    CHECK(reported.codes.front() == ErrorCode::NotAnAmount);
}

TEST_CASE("A new recipe is on the shelf and open, and its empty draft is kept") {
    const auto session = skewersSession();
    session->newRecipe(QStringLiteral("Leek tart"));
    rest(*session);
    CHECK(session->shelf().size() == 2);
    REQUIRE(session->draft()->failure());
    const auto edit = addLine(session->draft()->document(), 0, "200 g",
                              {"", {"usda-sr", "28", "11957"}, "fennel"}, "");
    REQUIRE(edit);
    const auto food = session->food({"usda-sr", "28", "11957"});
    REQUIRE(food);
    REQUIRE(session->draft()->apply(edit->edit, *food));
    CHECK_FALSE(session->draft()->failure());
    rest(*session);
    CHECK(session->saveState() == SaveState::Saved);
}

TEST_CASE("The shelf shows what the cook looks for") {
    const auto session = skewersSession();
    session->newRecipe(QStringLiteral("Leek tart"));
    rest(*session);
    session->findRecipes(QStringLiteral("fenn"));
    rest(*session);
    REQUIRE(session->shelf().size() == 1);
    CHECK(session->shelf().front().title == "Charred prawn & fennel skewers");
    session->findRecipes({});
    rest(*session);
    CHECK(session->shelf().size() == 2);
}

TEST_CASE("What was typed while another recipe is being opened reaches the file") {
    const auto session = skewersSession();
    const QString skewers = session->draft()->recipe();
    session->newRecipe(QStringLiteral("Leek tart"));
    rest(*session);
    const QString tart = session->draft()->recipe();
    session->openRecipe(skewers);
    rest(*session);
    SECTION("another recipe") {
        session->openRecipe(tart);
        setAmount(*session, "garlic", "7");
        rest(*session);
        CHECK(session->draft()->recipe() == tart);
        session->openRecipe(skewers);
        rest(*session);
    }
    SECTION("the same recipe, as when the kitchen moves to a file") {
        session->openRecipe(skewers);
        setAmount(*session, "garlic", "7");
        rest(*session);
    }
    rest(*session);
    CHECK(session->draft()->recipe() == skewers);
    CHECK(text(*session).find(R"("amount":"7")") != std::string::npos);
    CHECK(session->draft()->undoStack().count() == 1);
}

TEST_CASE("A reading stays with its recipe, though another is opened meanwhile") {
    const auto session = skewersSession();
    Reported reported{*session};
    const QString skewers = session->draft()->recipe();
    session->newRecipe(QStringLiteral("Leek tart"));
    rest(*session);
    const QString tart = session->draft()->recipe();
    const std::string tartBefore = text(*session);
    session->openRecipe(skewers);
    rest(*session);
    LedgerEntry entry;
    entry.id = "00000000-0000-4000-8000-000000000001";
    entry.at = "2026-05-16T12:00:00+02:00";
    entry.recipe = skewers.toStdString();
    entry.indication = "later";
    entry.shown = *Decimal::read("340");
    entry.unit = "g";
    entry.readability = Decimal{1, 0};
    entry.scale = "counter scale";
    const auto edit = setLineAmount(session->draft()->document(), "garlic", "7");
    session->openRecipe(tart);
    session->record({entry}, edit->edit);
    rest(*session);
    rest(*session);
    CHECK(reported.codes.empty());
    CHECK(session->draft()->recipe() == tart);
    CHECK(text(*session) == tartBefore);
    session->openRecipe(skewers);
    rest(*session);
    CHECK(text(*session).find(R"("amount":"7")") != std::string::npos);
}

TEST_CASE("A food that a reading brings comes along, though another recipe is opened meanwhile") {
    const auto session = skewersSession();
    Reported reported{*session};
    const QString skewers = session->draft()->recipe();
    session->newRecipe(QStringLiteral("Leek tart"));
    rest(*session);
    const QString tart = session->draft()->recipe();
    session->openRecipe(skewers);
    rest(*session);
    const auto butter = session->findFoods(QStringLiteral("butter"), 1);
    REQUIRE(butter.size() == 1);
    const auto food = session->food(butter.front().row);
    REQUIRE(food);
    const auto edit = setLineFood(session->draft()->document(), "garlic",
                                  {{}, butter.front().row, butter.front().name});
    REQUIRE(edit);
    session->openRecipe(tart);
    session->record({}, edit->edit, food);
    rest(*session);
    rest(*session);
    session->openRecipe(skewers);
    rest(*session);
    CHECK(reported.codes.empty());
    CHECK(session->draft()->closure().food(butter.front().row) != nullptr);
}

TEST_CASE("Of two indications that belong together, none is recorded where one is refused") {
    const auto session = skewersSession();
    Reported reported{*session};
    LedgerEntry entry;
    entry.id = "00000000-0000-4000-8000-000000000001";
    entry.at = "2026-05-16T12:00:00+02:00";
    entry.recipe = session->draft()->recipe().toStdString();
    entry.indication = "later";
    entry.shown = *Decimal::read("340");
    entry.unit = "g";
    entry.readability = Decimal{1, 0};
    entry.scale = "counter scale";
    const std::string before = text(*session);
    const auto edit = setLineAmount(session->draft()->document(), "garlic", "7");
    session->record({entry, entry}, edit->edit);
    rest(*session);
    REQUIRE(reported.codes.size() == 1);
    CHECK(reported.codes.front() == ErrorCode::LedgerIdUsed);
    CHECK(text(*session) == before);
    session->record({entry}, edit->edit);
    rest(*session);
    CHECK(reported.codes.size() == 1);
}

TEST_CASE("A journal whose end does not fit is told, and the draft goes on from what does") {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("k.nettare"));
    std::string recipe;
    {
        auto kitchen = Kitchen::create(path.toStdString(), now());
        REQUIRE(kitchen);
        recipe = *kitchen->addRecipe(skewersDocument(), now());
        const Json document = skewersDocument();
        const auto first = setLineAmount(document, "garlic", "3");
        const auto good = applied(document, first->edit);
        const auto second = setLineAmount(*good, "garlic", "4");
        REQUIRE(kitchen->journal(recipe, {0, {first->edit, second->edit}, 2, now()}));
    }
    printedByTool("sqlite3", "sqlite3 '" + path.toStdString() +
                                 "' \"UPDATE draft_edit SET edit = replace(edit, '\\\"3\\\"', "
                                 "'\\\"5\\\"') WHERE position = 1\"");
    auto opened = Kitchen::open(path.toStdString(), KitchenAccess::Write);
    REQUIRE(opened);
    KitchenSession session{std::move(*opened), starterTable(), false};
    Reported reported{session};
    session.openRecipe(QString::fromStdString(recipe));
    rest(session);
    REQUIRE(session.draft() != nullptr);
    REQUIRE(reported.codes.size() == 1);
    CHECK(reported.codes.front() == ErrorCode::DraftDamaged);
    CHECK(session.draft()->undoStack().count() == 1);
    setAmount(session, "garlic", "6");
    rest(session);
    CHECK(session.saveState() == SaveState::Saved);
    CHECK(reported.codes.size() == 1);
}

TEST_CASE("A draft whose text is no recipe opens empty, and the session says so") {
    const auto alien = GENERATE("[1,2]", "7", "{}", R"({"title":5,"lines":{"a":1},"steps":"x"})",
                                R"({"foods":[1,null],"makes":[],"portion":7,"scales":[3]})");
    INFO(alien);
    auto kitchen = Kitchen::inMemory(now());
    REQUIRE(kitchen);
    const auto recipe = kitchen->addRecipe(*parseJson(alien), now());
    REQUIRE(recipe);
    KitchenSession session{std::move(*kitchen), starterTable(), false};
    Reported reported{session};
    session.openRecipe(QString::fromStdString(*recipe));
    rest(session);
    REQUIRE(session.draft() != nullptr);
    REQUIRE(reported.codes.size() == 1);
    CHECK(reported.codes.front() == ErrorCode::DraftDamaged);
}

}  // namespace nettare
