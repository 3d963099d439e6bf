#pragma once

#include <string>

#include "core/nutrition/figures.h"
#include "core/support/json.h"

namespace nettare {

/// What a revision stores of its figures: the version of the arithmetic, and for every basis and
/// component value, u, nu (null = infinite), low, high (95 %), at_least and at_most (null = no
/// bound). A basis that has no figures, a portion in grams of a dish that was
/// not weighed, is left out. The order of lines changes no byte.
[[nodiscard]] Json figuresRecord(const Dossier& dossier, const Cooked& cooked);

/// writeJson() of that record, written without making it: a fifth of the time.
[[nodiscard]] std::string figuresRecordText(const Dossier& dossier, const Cooked& cooked);
/// The figures of one basis as they stand there, a list, appended to a text.
void appendFigureRecords(const Figures& figures, std::string& text);

}  // namespace nettare
