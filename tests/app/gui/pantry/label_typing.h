#pragma once

#include "app/gui/pantry/pantry_window.h"

#include <QString>

#include <memory>

#include "app/pantry/pantry_screen.h"
#include "app/session/kitchen_session.h"

namespace nettare {

/// Types a label in the pantry as a cook does, and counts the keys.
class LabelTyping {
public:
    explicit LabelTyping(PantryWindow& pantry) : pantry_{pantry} {}

    /// By its key.
    void openForm();
    /// Content: what the package prints.
    void write(const QString& text);
    void enter() { press(Qt::Key_Return); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    void save() { press(Qt::Key_S, Qt::ControlModifier); }
    /// Into a field by its name, in place of what stands there; not counted.
    void put(const char* field, const QString& text);
    /// What stands at the right of that field.
    [[nodiscard]] QString standsFor(const char* field);
    /// 100 kcal, 18 g of protein, and so many grams of carbohydrate in 170 g.
    void writeYoghurt(const QString& carbohydrate);

    [[nodiscard]] int keys() const { return keys_; }
    [[nodiscard]] qsizetype letters() const { return letters_; }

private:
    PantryWindow& pantry_;
    int keys_ = 0;
    qsizetype letters_ = 0;
};

/// The pantry of a kitchen in a file, opened anew.
class ReopenedPantry {
public:
    explicit ReopenedPantry(const QString& path);
    [[nodiscard]] PantryScreen& screen() { return *screen_; }

private:
    std::unique_ptr<KitchenSession> session_;
    std::unique_ptr<PantryScreen> screen_;
};

}  // namespace nettare
