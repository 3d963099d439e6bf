#include "app/figures/energy_readout.h"
#include "app/figures/figures_pane.h"
#include "app/figures/meaning_choice.h"
#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/widgets/basis_switch.h"
#include "app/widgets/beam_gauge.h"

#include <QAction>
#include "core/edit/way_edits.h"

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include <vector>

namespace nettare {

TEST_CASE("the switch of what figures are per is turned by arrows") {
    DemoWindow demo;
    auto& pane = *demo.window().findChild<FiguresPane*>();
    auto& basis = child<BasisSwitch>(demo.window(), "basis");
    auto& energy = child<EnergyReadout>(demo.window(), "energy");
    CHECK(pane.basis() == Basis::Portion);
    const QString portion = energy.spokenValue();
    basis.setFocus();
    QWidget* focused = QApplication::focusWidget();
    REQUIRE(focused != nullptr);
    pressKey(*focused, Qt::Key_Left);
    CHECK(pane.basis() == Basis::Piece);
    CHECK(energy.spokenValue() != portion);
    pressKey(*QApplication::focusWidget(), Qt::Key_Right);
    CHECK(energy.spokenValue() == portion);
}

TEST_CASE("the verdict says what the interval allows, and no chance is made up") {
    DemoWindow demo;
    const QString words = child<QLabel>(demo.window(), "verdict").text();
    CHECK(words.contains(QStringLiteral("(95 %)")));
    CHECK(words.contains(QStringLiteral("ceiling of 150 kcal")));
    CHECK_FALSE(words.contains(QStringLiteral("cases")));
}

TEST_CASE("what is known in part says at least and for how much of the weight") {
    DemoWindow demo;
    const auto& table = child<QTableView>(demo.window(), "figures");
    const int main = table.model()->rowCount();
    click(child<QPushButton>(demo.window(), "allComponents"));
    CHECK(table.model()->rowCount() > main);
    bool partial = false;
    for (int row = 0; row < table.model()->rowCount(); ++row) {
        const QString amount = table.model()->index(row, 1).data().toString();
        const QString known = table.model()->index(row, 2).data().toString();
        if (amount.startsWith(QStringLiteral("at least")))
            partial = partial || known.endsWith(QStringLiteral(" %"));
    }
    CHECK(partial);
}

TEST_CASE("what the figures are of is chosen below the number, and the text stays as it is") {
    DemoWindow demo;
    auto& choice = child<MeaningChoice>(demo.window(), "meaning");
    CHECK(choice.text() == QStringLiteral("this batch"));
    const auto uncertainty = [&] {
        return (*(*demo.draft().evaluation())[Basis::Piece])[Component::ENERC_KCAL].u;
    };
    const double batch = uncertainty();
    emit choice.chosen(Meaning::AnyPiece);
    CHECK(choice.text() == QStringLiteral("any one piece"));
    CHECK(uncertainty() > batch);
    emit choice.chosen(Meaning::RecipeMean);
    CHECK(uncertainty() < batch);
    CHECK_FALSE(demo.draft().undoStack().canUndo());
    settle();
    keepPicture(demo.window(), QStringLiteral("recipe-mean"));
}

TEST_CASE("a ceiling tells its probability and the portion that is safe") {
    DemoWindow demo;
    const QString words = child<QLabel>(demo.window(), "verdict").text();
    CHECK(words.contains(QStringLiteral("kept with a probability of ")));
    CHECK(words.contains(QStringLiteral("A portion of up to 1 skewer is safe.")));
    CHECK(
        child<BeamGauge>(demo.window(), "gauge").spokenValue().contains(QStringLiteral("is safe")));
}

TEST_CASE("a click, Enter or the menu of a figure asks where it comes from") {
    DemoWindow demo;
    auto& pane = *demo.window().findChild<FiguresPane*>();
    auto& table = child<QTableView>(demo.window(), "figures");
    std::vector<Component> asked;
    QObject::connect(&pane, &FiguresPane::pathAsked, &pane,
                     [&](Component component) { asked.push_back(component); });
    const QModelIndex fat = table.model()->index(0, 1);
    table.setCurrentIndex(fat);
    const auto backToSheet = [&] {
        demo.window().showScreen(QStringLiteral("sheet"));
        table.setFocus();
    };
    table.actions().constFirst()->trigger();
    backToSheet();
    pressKey(table, Qt::Key_Return);
    backToSheet();
    click(*table.viewport(), table.visualRect(fat).center());
    backToSheet();
    click(child<EnergyReadout>(demo.window(), "energy"));
    CHECK(asked == std::vector<Component>{Component::FAT, Component::FAT, Component::FAT,
                                          Component::ENERC_KCAL});
}

TEST_CASE("where one guess rules the energy, the pane says that its interval is simulated") {
    DemoWindow demo;
    const auto words = [&] { return child<QLabel>(demo.window(), "verdict").text(); };
    CHECK_FALSE(words().contains(QStringLiteral("simulated interval")));
    const auto guess =
        setAssumed(demo.draft().document(), "oil", {"60", "50", "by a very rough eye"});
    REQUIRE(guess);
    REQUIRE(demo.draft().apply(guess->edit));
    CHECK(words().contains(QStringLiteral("shows a simulated interval, since one source")));
}

}  // namespace nettare
