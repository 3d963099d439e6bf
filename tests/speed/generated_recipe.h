#pragma once

#include "core/recipe/dossier.h"

namespace speed {

/// A made-up recipe of that many lines: 40 foods with a value and a spread for every component, lines weighed
/// in one chain, by series, by table measure and as written, a mixture residue and a cooked weight.
[[nodiscard]] nettare::Dossier generatedDossier(std::size_t lines);

}  // namespace speed
