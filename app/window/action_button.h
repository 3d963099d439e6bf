#pragma once

#include <QAction>
#include <QPushButton>

namespace nettare {

/// A push button that shows and does what the action says, also while that changes. The button's
/// words are the action's icon text; its mnemonic belongs to the menu. The action must outlive it.
[[nodiscard]] QPushButton* actionButton(QAction* action, QWidget* parent = nullptr);

}  // namespace nettare
