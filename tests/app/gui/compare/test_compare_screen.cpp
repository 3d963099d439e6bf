#include "app/compare/compare_screen.h"

#include "app/compare/change_cards.h"
#include "app/compare/compare_table.h"
#include "app/compare/comparison_page.h"
#include "app/compare/method_difference.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/revisions/bring_back_bar.h"
#include "app/widgets/empty_state.h"

#include <QApplication>
#include <QCheckBox>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTableView>

#include <algorithm>

namespace nettare {

namespace {

/// The screen with two states chosen and compared.
void compareReady(CompareScreen& screen, StateOf left, StateOf right) {
    screen.compare(left, right);
    REQUIRE(waitUntil([&] { return !screen.isBusy(); }));
}

std::unique_ptr<CompareScreen> shownScreen(KitchenSession& kitchen) {
    auto screen = std::make_unique<CompareScreen>(kitchen);
    showReady(*screen, {1280, 800});
    REQUIRE(waitUntil([&] { return !screen->isBusy(); }));
    return screen;
}

ComparisonPage& pageOf(CompareScreen& screen) {
    return *screen.findChild<ComparisonPage*>();
}

int rowOf(const CompareModel& model, const char* food) {
    for (int row = 0; row < model.rowCount(); ++row)
        for (const int column : {CompareModel::LeftFood, CompareModel::RightFood})
            if (model.index(row, column).data().toString().startsWith(QLatin1String{food}))
                return row;
    return -1;
}

std::string cellText(const CompareModel& model, int row, int column) {
    return model.index(row, column).data().toString().toStdString();
}

Cell cellAt(const CompareModel& model, int row, int column) {
    return model.index(row, column).data(kCellRole).value<Cell>();
}

std::string cardChange(CompareScreen& screen, std::size_t card) {
    return pageOf(screen).cards().cards().at(card)->words().change.toStdString();
}

}  // namespace

TEST_CASE("compare begins with the newest revision and the draft that goes on from it") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    const CompareModel& model = pageOf(*screen).table().model();
    CHECK_FALSE(model.anyChange());
    CHECK(cardChange(*screen, 0) == "0 kcal");
    CHECK_THAT(spokenOf(pageOf(*screen).method()).description.toStdString(),
               Catch::Contains("[removed: bowl.] [added: bowl; let it stand for ten minutes.]"));
    CHECK(child<QPushButton>(*screen, "bringBack").text() ==
          QStringLiteral("Bring back revision 3…"));
    keepScreenPictures(*screen, QStringLiteral("compare-draft"));
}

TEST_CASE("nothing is said of two states before they are compared") {
    const auto kitchen = sampleSession();
    CompareScreen screen{*kitchen};
    showReady(screen, {1280, 800});
    if (screen.isBusy()) CHECK_FALSE(pageOf(screen).table().isVisible());
    REQUIRE(waitUntil([&] { return !screen.isBusy(); }));
    CHECK(pageOf(screen).table().isVisible());
}

TEST_CASE("two revisions of the demo differ by known grams and kilocalories") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    compareReady(*screen, 1, 3);
    const CompareModel& model = pageOf(*screen).table().model();
    const int garlic = rowOf(model, "garlic");
    REQUIRE(garlic >= 0);
    CHECK(cellText(model, garlic, CompareModel::RightAmount) == "2 cloves");
    CHECK(cellAt(model, garlic, CompareModel::RightAmount).change == CellChange::Changed);
    CHECK(cellText(model, garlic, CompareModel::GramsChange).starts_with("−"));
    const auto& energy = pageOf(*screen).cards().cards().at(0)->words();
    CHECK(energy.subject == QStringLiteral("Energy, per portion"));
    CHECK(energy.change.toStdString() == "−21 kcal");
    CHECK(energy.detail.startsWith(QStringLiteral("165 → 144 · ± ")));
    keepScreenPictures(*screen, QStringLiteral("compare"));
}

TEST_CASE("every difference of a comparison is that of the two numbers beside it") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    compareReady(*screen, 1, 2);
    const CompareModel& model = pageOf(*screen).table().model();
    const auto number = [&](int row, int column) {
        QString text = model.index(row, column).data().toString();
        text.replace(QChar{0x2212}, u'-').remove(QChar{0x202F});
        return text.isEmpty() ? 0.0 : text.toDouble();
    };
    for (int row = 0; row < model.rowCount(); ++row)
        for (const auto& [left, right, change] :
             {std::tuple{CompareModel::LeftGrams, CompareModel::RightGrams,
                         CompareModel::GramsChange},
              std::tuple{CompareModel::LeftEnergy, CompareModel::RightEnergy,
                         CompareModel::EnergyChange}}) {
            INFO("row " << row << ", column " << change);
            if (cellText(model, row, change).empty()) continue;
            CHECK(number(row, right) - number(row, left) ==
                  Approx(number(row, change)).margin(1e-9));
        }
}

TEST_CASE("changes only leaves out what is the same and keeps the batch") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    compareReady(*screen, 1, 3);
    const CompareModel& model = pageOf(*screen).table().model();
    const int all = model.rowCount();
    auto& box = child<QCheckBox>(*screen, "changesOnly");
    box.setFocus();
    pressKey(box, Qt::Key_Space);
    CHECK(model.rowCount() < all);
    for (int row = 0; row < model.rowCount() - 1; ++row)
        CHECK_FALSE(cellText(model, row, CompareModel::GramsChange).empty());
    CHECK(cellText(model, model.rowCount() - 1, CompareModel::LeftAmount) == "Batch");
    keepScreenPictures(*screen, QStringLiteral("compare-changes-only"));
}

TEST_CASE("the page scrolls by the wheel over the table and follows the cell that keys reach") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    compareReady(*screen, 1, 3);
    screen->resize(1280, 420);
    settle();
    const QScrollBar& bar = *pageOf(*screen).verticalScrollBar();
    REQUIRE(bar.maximum() > 0);
    auto& table = pageOf(*screen).table().view();
    turnWheel(*table.viewport());
    CHECK(bar.value() > 0);
    pageOf(*screen).verticalScrollBar()->setValue(0);
    table.setFocus();
    table.setCurrentIndex(table.model()->index(0, 0));
    for (int i = 0; i < 7; ++i) pressKey(table, Qt::Key_Down);
    CHECK(bar.value() > 0);
}

TEST_CASE("a change is told by mark and word, not by colour alone") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    compareReady(*screen, 1, 3);
    const CompareModel& model = pageOf(*screen).table().model();
    const int garlic = rowOf(model, "garlic");
    const QModelIndex amount = model.index(garlic, CompareModel::RightAmount);
    CHECK(amount.data(Qt::AccessibleTextRole).toString().contains(QStringLiteral("was 4 cloves")));
    CHECK(cellAt(model, garlic, CompareModel::RightAmount).change == CellChange::Changed);
}

TEST_CASE("states are chosen by keys, and the page follows") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    auto& third = child<QPushButton>(*screen, "state3");
    third.setFocus();
    pressKey(third, Qt::Key_Home);
    pressKey(*QApplication::focusWidget(), Qt::Key_Space);
    REQUIRE(waitUntil([&] { return !screen->isBusy(); }));
    CHECK(child<QPushButton>(*screen, "bringBack").text() ==
          QStringLiteral("Bring back revision 1…"));
    CHECK(cardChange(*screen, 0) == "−21 kcal");
}

TEST_CASE("the comparison with the draft follows an edit") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    Edit edit;
    edit.kind = EditKind::Portion;
    const Json* const portion = kitchen->draft()->document().find("portion");
    REQUIRE(portion != nullptr);
    Json three = *portion;
    *three.find("pieces") = Json{std::string{"3"}};
    edit.changes.push_back(SetMember{"/portion", *portion, three});
    REQUIRE(kitchen->draft()->apply(edit));
    REQUIRE(waitUntil([&] { return !screen->isBusy(); }));
    CHECK(cardChange(*screen, 0) == "+72 kcal");
}

TEST_CASE("bringing a compared revision back is said in place") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    compareReady(*screen, 2, 3);
    click(child<QPushButton>(*screen, "bringBack"));
    click(child<QPushButton>(*screen, "bringBackNow"));
    waitForRevision(*kitchen, 4);
    CHECK(screen->findChild<BringBackBar*>()->text().toStdString() ==
          "Revision 2 is back: its text is the draft now and is kept as revision 4.");
    REQUIRE(waitUntil([&] { return !screen->isBusy(); }));
}

TEST_CASE("with the draft alone there is nothing to compare, and one thing to do") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    kitchen->newRecipe(QStringLiteral("Barley soup"));
    auto& empty = *screen->findChild<EmptyState*>();
    REQUIRE(waitUntil([&] { return empty.isVisible(); }));
    CHECK(empty.text().startsWith(QStringLiteral("There is one state only: the draft")));
    QSignalSpy keep{screen.get(), &CompareScreen::keepAsked};
    click(child<QPushButton>(*screen, "emptyAction"));
    CHECK(keep.size() == 1);
    keepScreenPictures(*screen, QStringLiteral("compare-empty"));
}

TEST_CASE("every control of the comparison has a name and the table's cells are reached by keys") {
    const auto kitchen = sampleSession();
    const auto screen = shownScreen(*kitchen);
    compareReady(*screen, 1, 3);
    CHECK(unnamedFocusables(*screen).join(u'\n').toStdString().empty());
    auto& table = pageOf(*screen).table().view();
    table.setFocus();
    table.setCurrentIndex(table.model()->index(0, 0));
    pressKey(table, Qt::Key_Down);
    pressKey(table, Qt::Key_Right);
    CHECK(table.currentIndex() == table.model()->index(1, 1));
    QSet<QString> reached;
    for (int i = 0; i < 12; ++i) {
        reached << spokenOf(*QApplication::focusWidget()).name;
        pressKey(*QApplication::focusWidget(), Qt::Key_Tab);
    }
    for (const char* name : {"What changed", "Method", "Changes only"})
        CHECK(reached.contains(QLatin1String{name}));
}

}  // namespace nettare
