#include "app/figures/energy_readout.h"
#include "app/figures/figures_pane.h"
#include "app/gui/support/gui.h"
#include "app/gui/window/demo_window.h"
#include "app/widgets/basis_switch.h"

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

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

}  // namespace nettare
