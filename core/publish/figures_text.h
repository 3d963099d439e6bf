#pragma once

#include <string>

#include "core/nutrition/target.h"

namespace nettare {

/// The figures as a page of plain text: heading, one line per component, the lines with their grams
/// and how they were found, alternatives that disagree, and the verdict on every ceiling and floor.
/// For people: numbers are rounded once, here; other programs read figuresJson().
[[nodiscard]] std::string figuresPage(const Figures& figures, const Dossier& dossier,
                                      const Cooked& cooked,
                                      const std::vector<TargetVerdict>& verdicts);

}  // namespace nettare
