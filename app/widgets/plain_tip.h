#pragma once

#include <QString>

namespace nettare {

/// The text as a tool tip shows it letter by letter, also where somebody typed markup into it.
[[nodiscard]] QString plainTip(const QString& text);

}  // namespace nettare
