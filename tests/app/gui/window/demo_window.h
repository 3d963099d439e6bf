#pragma once

#include "app/session/kitchen_session.h"
#include "app/theme/theme.h"
#include "app/window/main_window.h"

#include <QSize>

namespace nettare {

/// The window on a kitchen in memory with both example recipes, shown and ready; the skewers are
/// open.
class DemoWindow {
public:
    explicit DemoWindow(QSize size = {1280, 800}, bool withRecipes = true);

    [[nodiscard]] MainWindow& window() { return *window_; }
    [[nodiscard]] KitchenSession& kitchen() { return *kitchen_; }
    [[nodiscard]] DraftSession& draft() { return *kitchen_->draft(); }
    /// Opens a recipe and waits for it.
    void open(const QString& id);
    /// Text of a line's cell, as it is copied.
    [[nodiscard]] QString lineText(int row, int column);
    /// Opens the editor of a line's cell and returns it.
    [[nodiscard]] QWidget& edit(int row, int column);
    /// Kilocalories of a portion, unrounded.
    [[nodiscard]] double kcal();

private:
    Theme theme_;
    std::unique_ptr<KitchenSession> kitchen_;
    std::unique_ptr<MainWindow> window_;
};

}  // namespace nettare
