#pragma once

#include "db/food_tables.h"

namespace nettare {

/// The starter in shareFolder(), and imported tables in the folder that the environment variable
/// NETTARE_TABLES names, else in nettare/tables below XDG_DATA_HOME or ~/.local/share.
[[nodiscard]] TablePlaces tablePlaces();

}  // namespace nettare
