#pragma once

#include <functional>

#include "core/nutrition/next_act.h"

namespace nettare {

/// Does an act in the dossier as if it found what is expected now: grams as they are, two pieces
/// that keep mean and spread of a series, a label that prints the food's own values. `cooked` is
/// that of the dossier. Returns what puts the dossier back; nothing where the act cannot be done.
[[nodiscard]] std::function<void()> tryAct(const Act& act, Dossier& dossier, const Cooked& cooked);

/// Adds so many readings to a series of the dossier, on its scale, each of as many pieces as its
/// first or of a lot of the mean size. They keep its mean or ratio and its own spread, or of one
/// reading the earlier spread that it is pooled with (one added alone lies a spread above). Returns
/// what puts the dossier back; nothing where no reading counts in it or `more` is under 1.
[[nodiscard]] std::function<void()> tryMoreOf(std::size_t series, int more, Dossier& dossier);

}  // namespace nettare
