#pragma once

#include <optional>
#include <string>

#include "core/nutrition/figures.h"
#include "core/recipe/dossier.h"
#include "core/support/json.h"

namespace nettare {

/// The figures that were stored with a revision.
struct KeptFigures {
    Json figures;        ///< figuresRecord() of that time
    int arithmetic = 0;  ///< kArithmeticVersion of that time
};

/// Whether today's arithmetic is another one, or comes out with any other number.
[[nodiscard]] bool differFromToday(const KeptFigures& kept, const Dossier& dossier,
                                   const Cooked& cooked);

/// The figure that was kept; nothing where the basis or the component was not.
[[nodiscard]] std::optional<Figure> keptFigure(const KeptFigures& kept, Basis basis,
                                               Component component);

/// What was kept for a basis beside today's figures, component by component where they differ, as
/// lines for people.
[[nodiscard]] std::string keptBesideToday(const KeptFigures& kept, const Figures& today);

/// What was kept for a basis, for other programs: "arithmetic" and "figures".
[[nodiscard]] Json keptJson(const KeptFigures& kept, Basis basis);
/// The same with only those figures that come out otherwise today.
[[nodiscard]] Json keptOtherwise(const KeptFigures& kept, const Figures& today);

}  // namespace nettare
