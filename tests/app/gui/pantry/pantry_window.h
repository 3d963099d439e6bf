#pragma once

#include "app/gui/window/demo_window.h"
#include "app/pantry/pantry_screen.h"

#include <QString>

namespace nettare {

/// The demo window with its pantry in front.
class PantryWindow {
public:
    PantryWindow();

    [[nodiscard]] DemoWindow& demo() { return demo_; }
    [[nodiscard]] KitchenSession& kitchen() { return demo_.kitchen(); }
    [[nodiscard]] PantryScreen& screen() { return demo_.window().pantry(); }
    /// Types into the field that searches, in place of what stands there.
    void search(const QString& words);
    /// Name and second line of each row of the list.
    [[nodiscard]] QStringList listed();
    /// The name of the food that is shown.
    [[nodiscard]] QString shown();
    /// Lets the kitchen write and read all it has to.
    void rest();
    /// An own food is there when this returns.
    TableRow addOwn(const QString& name, double energyKcal);
    /// A cell of a table in there, as it is copied.
    [[nodiscard]] QString cell(const char* table, int row, int column);
    /// The row of a table whose first cell says so; -1 for none.
    [[nodiscard]] int rowOf(const char* table, const QString& first);

private:
    DemoWindow demo_;
};

}  // namespace nettare
