#pragma once

#include "app/theme/type.h"

class QPushButton;
class QString;

namespace nettare {

/// Least size of text at the bench, px: 22 minutes of arc at 80 cm and 17 at a metre, for capitals
/// of Lato at 96 px an inch (ISO 9241-3 asks for 16, as quoted in a guide to it).
inline constexpr int kBenchTextPx = 27;

[[nodiscard]] QFont benchFont(Weight weight = Weight::Regular);
[[nodiscard]] QFont benchFigures(Weight weight = Weight::Regular);

/// A button for wet hands. `name` is its object name.
[[nodiscard]] QPushButton* benchButton(const QString& text, const char* name);

}  // namespace nettare
