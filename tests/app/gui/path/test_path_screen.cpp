#include "app/figures/energy_readout.h"
#include "app/gui/support/cut_texts.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/gui/window/demo_window.h"
#include "app/path/path_screen.h"
#include "app/path/path_tree.h"
#include "app/path/simulation_card.h"
#include "app/theme/pseudo_translator.h"
#include "app/widgets/basis_switch.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/message_line.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

namespace nettare {

namespace {

/// Enough to see that a simulation ran, on any machine.
constexpr std::uint64_t kFewTrials = 100'000;

/// The window on the examples with its path screen.
struct PathWindow {
    PathWindow() { screen.setTrials(kFewTrials); }

    DemoWindow demo;
    MainWindow& window = demo.window();
    PathScreen& screen = *window.findChild<PathScreen*>();
    PathTree& tree = child<PathTree>(window, "path");
    QTableView& figures = child<QTableView>(window, "figures");

    [[nodiscard]] QString current() { return window.screens().current(); }
    [[nodiscard]] QString first() {
        return tree.model()->index(0, 0).data(Qt::AccessibleTextRole).toString();
    }
    void clickFigure(int row) {
        click(*figures.viewport(), figures.visualRect(figures.model()->index(row, 1)).center());
        settle();
    }
    [[nodiscard]] SimulationCard& card() { return child<SimulationCard>(window, "simulationCard"); }
    void waitForCalm() {
        REQUIRE(waitUntil([this] { return screen.isCalm(); }));
        settle();
    }
};

}  // namespace

TEST_CASE("a click on a figure shows where it comes from, and Escape leads back to it") {
    PathWindow shown;
    shown.clickFigure(5);
    CHECK(shown.current() == QStringLiteral("path"));
    CHECK(shown.screen.question() == PathQuestion{Component::PROCNT, Basis::Portion});
    CHECK(shown.tree.hasFocus());
    CHECK(shown.first().contains(QStringLiteral(" g")));
    shown.waitForCalm();
    pressKey(shown.tree, Qt::Key_Escape);
    CHECK(shown.current() == QStringLiteral("sheet"));
    CHECK(shown.figures.hasFocus());
}

TEST_CASE("Enter on a figure shows its path in the basis that is shown") {
    PathWindow shown;
    auto& basis = child<BasisSwitch>(shown.window, "basis");
    basis.setFocus();
    pressKey(*QApplication::focusWidget(), Qt::Key_Left);
    shown.figures.setFocus();
    shown.figures.setCurrentIndex(shown.figures.model()->index(1, 0));
    pressKey(shown.figures, Qt::Key_Return);
    CHECK(shown.current() == QStringLiteral("path"));
    CHECK(shown.screen.question() == PathQuestion{Component::FASAT, Basis::Piece});
}

TEST_CASE("F7 shows the path of the energy, or of the figure that has the cursor") {
    PathWindow shown;
    pressKey(shown.window, Qt::Key_F7);
    CHECK(shown.current() == QStringLiteral("path"));
    CHECK(shown.screen.question().component == Component::ENERC_KCAL);
    shown.waitForCalm();
    pressKey(shown.tree, Qt::Key_Escape);
    shown.figures.setFocus();
    shown.figures.setCurrentIndex(shown.figures.model()->index(0, 0));
    pressKey(shown.window, Qt::Key_F7);
    CHECK(shown.screen.question().component == Component::FAT);
}

TEST_CASE("a click on the energy shows its path") {
    PathWindow shown;
    click(child<EnergyReadout>(shown.window, "energy"));
    CHECK(shown.current() == QStringLiteral("path"));
    CHECK(shown.screen.question().component == Component::ENERC_KCAL);
}

TEST_CASE("Enter on a line of the path leads to that line on the sheet, and F7 back to its place") {
    PathWindow shown;
    shown.clickFigure(0);
    shown.waitForCalm();
    QModelIndex step = shown.tree.model()->index(0, 0);
    while (step.isValid() && !shown.tree.steps().step(step).line)
        step = shown.tree.model()->index(0, 0, step);
    REQUIRE(step.isValid());
    shown.tree.setCurrentIndex(step);
    const std::size_t line = *shown.tree.steps().step(step).line;
    pressKey(shown.tree, Qt::Key_Return);
    CHECK(shown.current() == QStringLiteral("sheet"));
    const auto& lines = child<QTableView>(shown.window, "lines");
    CHECK(lines.hasFocus());
    CHECK(lines.currentIndex().row() == static_cast<int>(line));
    const auto rows = PathModel::rowsTo(step);
    pressKey(shown.window, Qt::Key_F7);
    CHECK(shown.screen.question().component == Component::FAT);
    CHECK(PathModel::rowsTo(shown.tree.currentIndex()) == rows);
}

TEST_CASE("the path goes to the clipboard as text, by button and by keys") {
    PathWindow shown;
    QApplication::clipboard()->clear();
    pressKey(shown.window, Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(shown.current() == QStringLiteral("path"));
    const QString text = QApplication::clipboard()->text();
    CHECK(text.contains(QStringLiteral("kcal")));
    CHECK(text.count(u'\n') > 5);
    QApplication::clipboard()->clear();
    click(child<QPushButton>(shown.window, "copyPath"));
    CHECK(QApplication::clipboard()->text() == text);
    QApplication::clipboard()->clear();
    pressKey(shown.tree, Qt::Key_C, Qt::ControlModifier);
    CHECK(QApplication::clipboard()->text() == text);
}

TEST_CASE("a simulation runs beside the window and says what it found") {
    PathWindow shown;
    pressKey(shown.window, Qt::Key_F7);
    shown.waitForCalm();
    auto& button = child<QPushButton>(shown.window, "simulate");
    if (button.isVisible()) click(button);
    shown.waitForCalm();
    CHECK_FALSE(shown.card().isRunning());
    CHECK_THAT(
        shown.card().text().toStdString(),
        Catch::Contains("simulated batches: ") && Catch::Contains(" kcal in 95\u00A0% of them."));
}

TEST_CASE("Escape ends a simulation and stays; the next one leads back to the sheet") {
    PathWindow shown;
    shown.screen.setTrials(1'000'000);
    pressKey(shown.window, Qt::Key_F7);
    shown.waitForCalm();
    auto& button = child<QPushButton>(shown.window, "simulate");
    REQUIRE(button.isVisible());
    click(button);
    REQUIRE(shown.card().isRunning());
    pressKey(button, Qt::Key_Escape);
    CHECK_FALSE(shown.card().isRunning());
    CHECK(shown.current() == QStringLiteral("path"));
    shown.waitForCalm();
    CHECK_THAT(shown.card().text().toStdString(), Catch::StartsWith("Cancelled."));
    pressKey(button, Qt::Key_Escape);
    CHECK(shown.current() == QStringLiteral("sheet"));
}

TEST_CASE("what to weigh next stands beside the path") {
    PathWindow shown;
    pressKey(shown.window, Qt::Key_F7);
    shown.waitForCalm();
    const auto labels = child<QWidget>(shown.window, "nextCard").findChildren<QLabel*>();
    REQUIRE(labels.size() == 2);
    CHECK_THAT(labels[0]->text().toStdString(),
               Catch::StartsWith("Next: ") || Catch::Equals("Nothing to weigh"));
    CHECK_FALSE(labels[1]->text().isEmpty());
}

TEST_CASE("a path follows what was edited") {
    PathWindow shown;
    pressKey(shown.window, Qt::Key_F7);
    shown.waitForCalm();
    const QString before = shown.first();
    pressKey(shown.tree, Qt::Key_Escape);
    QWidget& editor = shown.demo.edit(2, 0);
    typeText(editor, QStringLiteral("3 cups"));
    pressKey(editor, Qt::Key_Return);
    settle();
    pressKey(shown.window, Qt::Key_F7);
    shown.waitForCalm();
    CHECK(shown.first() != before);
}

TEST_CASE("the path of the last figures stays where the text has none, and says so") {
    PathWindow shown;
    QWidget& editor = shown.demo.edit(2, 0);
    typeText(editor, QStringLiteral("some"));
    pressKey(editor, Qt::Key_Return);
    settle();
    REQUIRE(shown.demo.draft().failure());
    pressKey(shown.window, Qt::Key_F7);
    CHECK(shown.first().contains(QStringLiteral("kcal")));
    CHECK_THAT(child<MessageLine>(shown.window, "pathTrouble").text().toStdString(),
               Catch::StartsWith("This is the path of the last figures that could be computed. "));
}

TEST_CASE("a recipe without lines has no path, and the screen says what to do") {
    DemoWindow demo;
    demo.window().commands().newRecipe->trigger();
    REQUIRE(waitUntil([&] { return demo.draft().evaluation() == nullptr; }));
    settle();
    pressKey(demo.window(), Qt::Key_F7);
    auto& screen = *demo.window().findChild<PathScreen*>();
    const auto& empty = *screen.findChild<EmptyState*>();
    REQUIRE(empty.isVisible());
    CHECK_THAT(empty.text().toStdString(), Catch::StartsWith("There are no figures yet\n"));
    CHECK_FALSE(child<QPushButton>(screen, "copyPath").isEnabled());
    click(child<QPushButton>(screen, "emptyAction"));
    CHECK(demo.window().screens().current() == QStringLiteral("sheet"));
}

TEST_CASE("everything on the path screen that takes the focus has a name") {
    PathWindow shown;
    pressKey(shown.window, Qt::Key_F7);
    shown.waitForCalm();
    CHECK(unnamedFocusables(shown.screen).join(u'\n').toStdString().empty());
    shown.screen.showPage(1);
    settle();
    CHECK(unnamedFocusables(shown.screen).join(u'\n').toStdString().empty());
    for (const char* plot : {"linePlot", "sharePlot", "intervalPlot"}) {
        INFO(plot);
        CHECK_FALSE(spokenOf(child<QWidget>(shown.screen, plot)).description.isEmpty());
    }
}

TEST_CASE("the path screen has room for longer languages at 1280x800") {
    PseudoTranslator longer;
    QCoreApplication::installTranslator(&longer);
    {
        const auto kitchen = sampleSession();
        PathScreen screen{*kitchen, [](QWidget*, QPrinter&) { return false; }};
        screen.setTrials(kFewTrials);
        showReady(screen, {1280, 740});
        REQUIRE(waitUntil([&] { return screen.isCalm(); }));
        settle();
        CHECK(cutTexts(screen).join(u'\n').toStdString().empty());
        keepPicture(screen, QStringLiteral("path-longer"));
        screen.showPage(1);
        settle();
        CHECK(cutTexts(screen).join(u'\n').toStdString().empty());
        keepPicture(screen, QStringLiteral("plots-longer"));
    }
    QCoreApplication::removeTranslator(&longer);
}

TEST_CASE("pictures of the path and its plots by day and by night") {
    const auto kitchen = sampleSession();
    PathScreen screen{*kitchen, [](QWidget*, QPrinter&) { return false; }};
    screen.setTrials(kFewTrials);
    showReady(screen, {1280, 740});
    REQUIRE(waitUntil([&] { return screen.isCalm(); }));
    if (auto& button = child<QPushButton>(screen, "simulate"); button.isVisible()) click(button);
    REQUIRE(waitUntil([&] { return screen.isCalm(); }));
    child<PathTree>(screen, "path").setFocus();
    keepScreenPictures(screen, QStringLiteral("path"));
    screen.showPage(1);
    settle();
    CHECK(child<QWidget>(screen, "linePlot").isVisible());
    keepScreenPictures(screen, QStringLiteral("plots"));
}

}  // namespace nettare
