#pragma once

#include <QStringList>
#include <QWidget>

namespace nettare {

/// The texts of visible labels, buttons and table headers in there that have less room than they
/// need, and of labels and buttons that lie over one another. What a cook wrote and a table's cell
/// shows is not among them: it is the cook's, and a tool tip has it whole.
[[nodiscard]] QStringList cutTexts(const QWidget& root);

}  // namespace nettare
