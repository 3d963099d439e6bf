#pragma once

#include "app/theme/palette.h"
#include "core/recipe/recipe_document.h"

#include <QString>

#include <cstdint>

namespace nettare {

/// Where a figure comes from, told by shape and word; the colour only repeats it.
enum class Mark : std::uint8_t {
    None,
    Weighed,  ///< filled square: own reading or series
    Label,    ///< outlined tag with a bar
    Table,    ///< outlined diamond
    Density,  ///< outlined diamond; the word tells it from a table's measure
    Assumed,  ///< dotted ring
    NoData,   ///< hatch
};

[[nodiscard]] Mark markOf(Way way);

/// In the user's language: "weighed", "by density", "no data". Empty for None.
[[nodiscard]] QString wordOf(Mark mark);
/// As wordOf, but "series" for a series.
[[nodiscard]] QString wordOf(Way way);

[[nodiscard]] Role roleOf(Mark mark);

}  // namespace nettare
