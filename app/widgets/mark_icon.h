#pragma once

#include "app/widgets/mark.h"

#include <QIcon>

namespace nettare {

/// The mark of a way to grams as the icon of a button; it follows the palette by a repaint.
[[nodiscard]] QIcon iconOf(Mark mark);

}  // namespace nettare
