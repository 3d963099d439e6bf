#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/trial/trial_lines_model.h"
#include "app/trial/trial_screen.h"
#include "app/widgets/message_line.h"

#include <QLabel>
#include <QPushButton>
#include <QTableView>

namespace nettare {

namespace {

constexpr int kTriedOil = 2;

struct TrialDesk {
    DemoWindow demo;
    QWidget& screen;

    TrialDesk() : screen{shown()} {}

    QWidget& shown() {
        demo.window().showScreen(QStringLiteral("trial"));
        settle();
        return *demo.window().findChild<TrialScreen*>();
    }
    QTableView& lines() { return child<QTableView>(screen, "triedLines"); }
    QString figure(int row, int column) {
        const auto& table = child<QTableView>(screen, "triedFigures");
        return table.model()->index(row, column).data().toString();
    }
    void tryAmount(int row, const QString& text) {
        lines().model()->setData(lines().model()->index(row, TrialLinesModel::Tried), text);
    }
    double kcal() { return demo.kcal(); }
};

}  // namespace

TEST_CASE("other amounts are tried beside the draft, which stays as it is") {
    TrialDesk desk;
    const Json before = desk.demo.draft().document();
    const QString energy = desk.figure(0, 2);
    CHECK(desk.figure(0, 3) == QStringLiteral("no change"));
    CHECK_FALSE(child<QPushButton>(desk.screen, "useTried").isEnabled());
    desk.tryAmount(kTriedOil, QStringLiteral("2 tbsp"));
    CHECK(desk.figure(0, 2) != energy);
    CHECK(desk.figure(0, 1) == energy);
    CHECK(desk.figure(0, 3).startsWith(QChar{0x2212}));
    CHECK(desk.demo.draft().document() == before);
    CHECK(child<QPushButton>(desk.screen, "useTried").isEnabled());
    settle();
    keepPicture(desk.demo.window(), QStringLiteral("trial"));
    click(child<QPushButton>(desk.screen, "tryAgain"));
    CHECK(desk.figure(0, 3) == QStringLiteral("no change"));
}

TEST_CASE("tried amounts are taken over as one step of undo") {
    TrialDesk desk;
    const double before = desk.kcal();
    desk.tryAmount(kTriedOil, QStringLiteral("50 %"));
    desk.lines().setCurrentIndex(desk.lines().model()->index(0, 0));
    pressKey(desk.lines(), Qt::Key_Minus);
    const QString tried = desk.figure(0, 2);
    click(child<QPushButton>(desk.screen, "useTried"));
    settle();
    CHECK(desk.kcal() < before);
    CHECK(desk.demo.draft().undoStack().index() == 1);
    CHECK(desk.demo.lineText(kTriedOil, 0).startsWith(QStringLiteral("1")));
    desk.shown();
    CHECK(desk.figure(0, 1) == tried);
    desk.demo.draft().undoStack().undo();
    CHECK(desk.kcal() == before);
}

TEST_CASE("one amount is found that meets the ceiling") {
    TrialDesk desk;
    click(child<QPushButton>(desk.screen, "solve"));
    const auto& message = *desk.screen.findChild<MessageLine*>();
    CHECK(message.isVisible());
    CHECK(child<QLabel>(desk.screen, "triedVerdicts")
              .text()
              .contains(QStringLiteral("met, the upper end is 150")));
    settle();
    keepPicture(desk.demo.window(), QStringLiteral("trial-solved"));
}

TEST_CASE("an amount of another unit is refused and nothing changes") {
    TrialDesk desk;
    desk.tryAmount(kTriedOil, QStringLiteral("2 cups"));
    CHECK(desk.figure(0, 3) == QStringLiteral("no change"));
    const auto& message = *desk.screen.findChild<MessageLine*>();
    CHECK(message.isVisible());
    CHECK(message.text().contains(QStringLiteral("cups")));
}

}  // namespace nettare
