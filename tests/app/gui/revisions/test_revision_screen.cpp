#include "app/revisions/revision_screen.h"

#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/revisions/bring_back_bar.h"
#include "app/revisions/revision_figures.h"
#include "app/revisions/revision_model.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/screen_header.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

#include <algorithm>

namespace nettare {

namespace {

std::string textAt(const QTableView& table, int row, int column) {
    return table.model()->index(row, column).data().toString().toStdString();
}

/// Waits until every revision has its figures.
void waitForFigures(const QTableView& table) {
    REQUIRE(waitUntil([&] {
        for (int row = 0; row < table.model()->rowCount(); ++row)
            if (textAt(table, row, RevisionModel::Ceiling) == "…") return false;
        return true;
    }));
}

const RevisionSummary& revisionOf(const KitchenSession& kitchen, int number) {
    const auto& all = kitchen.revisions();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const auto& each) { return each.number == number; });
    REQUIRE(found != all.end());
    return *found;
}

}  // namespace

TEST_CASE("revisions are listed newest first with their energy and their ceiling") {
    const auto kitchen = sampleSession();
    RevisionScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    const auto& table = child<QTableView>(screen, "revisions");
    REQUIRE(table.model()->rowCount() == 3);
    waitForFigures(table);
    CHECK(textAt(table, 0, RevisionModel::Number) == "3");
    CHECK(textAt(table, 2, RevisionModel::Kept) == "11 April 2026");
    CHECK_THAT(textAt(table, 0, RevisionModel::EnergyColumn), Catch::StartsWith("144"));
    CHECK_THAT(textAt(table, 1, RevisionModel::EnergyColumn), Catch::StartsWith("153"));
    CHECK_THAT(textAt(table, 2, RevisionModel::EnergyColumn), Catch::StartsWith("165"));
    CHECK_THAT(textAt(table, 0, RevisionModel::Ceiling),
               Catch::StartsWith("met by value, interval "));
    CHECK(textAt(table, 2, RevisionModel::Ceiling) == "missed by 15 kcal");
    CHECK(child<QLabel>(screen, "detail")
              .text()
              .startsWith(QStringLiteral("Revision 3 · 16 May 2026 · “3 tbsp oil")));
    keepScreenPictures(screen, QStringLiteral("revisions"));
}

TEST_CASE("a revision's energy stays as it was kept, and says where today's is another") {
    const auto kitchen = sampleSession();
    std::optional<OpenedRevision> opened;
    kitchen->openRevision(1, [&](OpenedRevision revision) { opened = std::move(revision); });
    kitchen->settle();
    REQUIRE(opened);
    CHECK(revisionFiguresOf(*opened).energy.problem.isEmpty());
    for (Json& basis : *opened->kept.figures.find("bases")->items())
        for (Json& figure : *basis.find("figures")->items())
            if (*figure.find("component") == Json{std::string{"ENERC_KCAL"}})
                figure.set("value", Json{171.0});
    const Cell energy = revisionFiguresOf(*opened).energy;
    CHECK(energy.text == QStringLiteral("171"));
    CHECK(energy.problem.startsWith(
        QStringLiteral("As it was kept. Today's arithmetic comes to 165 kcal")));
}

TEST_CASE("a revision is compared with the draft, and two with each other, by keys alone") {
    const auto kitchen = sampleSession();
    RevisionScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    auto& table = child<QTableView>(screen, "revisions");
    QSignalSpy asked{&screen, &RevisionScreen::compareAsked};
    table.setFocus();
    pressKey(table, Qt::Key_Down);
    pressKey(table, Qt::Key_Return);
    REQUIRE(asked.size() == 1);
    CHECK(asked[0][0].toInt() == 2);
    CHECK_FALSE(asked[0][1].value<std::optional<int>>().has_value());
    pressKey(table, Qt::Key_Down, Qt::ShiftModifier);
    CHECK(screen.selected() == std::vector{1, 2});
    CHECK_FALSE(child<QPushButton>(screen, "compareWithDraft").isEnabled());
    click(child<QPushButton>(screen, "compareTwo"));
    REQUIRE(asked.size() == 2);
    CHECK(asked[1][0].toInt() == 1);
    CHECK(asked[1][1].value<std::optional<int>>() == 2);
}

TEST_CASE("bringing a revision back keeps its text as a new revision, and undo takes it back") {
    const auto kitchen = sampleSession();
    RevisionScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    const std::string draftBefore = writeJson(kitchen->draft()->document());
    auto& table = child<QTableView>(screen, "revisions");
    table.selectRow(2);
    click(child<QPushButton>(screen, "bringBack"));
    auto& bar = *screen.findChild<BringBackBar*>();
    CHECK(bar.text().toStdString() ==
          "Bring back revision 1? Its text takes the place of the draft's and is kept as revision "
          "4. Undo gives the draft's text back.");
    CHECK(child<QPushButton>(screen, "bringBackNow").hasFocus());
    keepScreenPictures(screen, QStringLiteral("revisions-bring-back"));
    QSignalSpy back{&bar, &BringBackBar::broughtBack};
    pressKey(child<QPushButton>(screen, "bringBackNow"), Qt::Key_Space);
    waitForRevision(*kitchen, 4);
    CHECK(back.size() == 1);
    CHECK(bar.text().toStdString() ==
          "Revision 1 is back: its text is the draft now and is kept as revision 4.");
    CHECK(revisionOf(*kitchen, 4).hash == revisionOf(*kitchen, 1).hash);
    CHECK(revisionOf(*kitchen, 4).parent == 1);
    CHECK(textAt(table, 0, RevisionModel::From) == "revision 1");
    kitchen->draft()->undoStack().undo();
    CHECK(writeJson(kitchen->draft()->document()) == draftBefore);
}

TEST_CASE("escape thinks better of bringing a revision back") {
    const auto kitchen = sampleSession();
    RevisionScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    click(child<QPushButton>(screen, "bringBack"));
    pressKey(child<QPushButton>(screen, "bringBackNow"), Qt::Key_Escape);
    CHECK_FALSE(screen.findChild<BringBackBar*>()->isVisible());
    CHECK(child<QTableView>(screen, "revisions").hasFocus());
    kitchen->settle();
    CHECK(kitchen->revisions().size() == 3);
}

TEST_CASE("a recipe without a revision offers to keep the first") {
    const auto kitchen = sampleSession();
    RevisionScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    kitchen->newRecipe(QStringLiteral("Barley soup"));
    REQUIRE(waitUntil([&] { return screen.findChild<EmptyState*>()->isVisible(); }));
    CHECK(
        screen.findChild<EmptyState*>()->text().startsWith(QStringLiteral("No revision kept yet")));
    CHECK(screen.findChild<ScreenHeader*>()->subject() == QStringLiteral("Barley soup"));
    QSignalSpy keep{&screen, &RevisionScreen::keepAsked};
    auto& action = child<QPushButton>(screen, "emptyAction");
    CHECK(action.text() == QStringLiteral("Keep as revision 1"));
    action.setFocus();
    pressKey(action, Qt::Key_Space);
    CHECK(keep.size() == 1);
    keepScreenPictures(screen, QStringLiteral("revisions-empty"));
}

TEST_CASE("every control of the revision list has a name") {
    const auto kitchen = sampleSession();
    RevisionScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    CHECK(unnamedFocusables(screen).join(u'\n').toStdString().empty());
}

}  // namespace nettare
