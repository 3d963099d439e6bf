#pragma once

#include <functional>

#include "core/nutrition/next_act.h"

namespace nettare {

/// Does an act in the dossier as if it found what is expected now: grams as they are, two pieces
/// that keep mean and spread of a series, a label that prints the food's own values. `cooked` is
/// that of the dossier. Returns what puts the dossier back; nothing where the act cannot be done.
[[nodiscard]] std::function<void()> tryAct(const Act& act, Dossier& dossier, const Cooked& cooked);

}  // namespace nettare
