#include "core/publish/target_row.h"

#include <fmt/core.h>

#include <algorithm>

#include "core/publish/basis_text.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

std::string decidingEnd(const TargetVerdict& verdict, int decimals) {
    if (!verdict.target.atMost)
        return "the lower end is " + numberAt(decimals, verdict.interval.low, Direction::Floor);
    if (!verdict.interval.high) return "it has no upper end";
    return "the upper end is " + numberAt(decimals, *verdict.interval.high, Direction::Ceiling);
}

/// In percent. Only what is exact is certain.
std::string probabilityText(const TargetVerdict& verdict) {
    constexpr double kAlmost = 0.999;
    const bool uncertain = verdict.figure.u > 0;
    const double probability =
        uncertain ? std::min(verdict.probability, kAlmost) : verdict.probability;
    return numberAt(1, 100 * probability, Direction::Floor) + " %";
}

/// Whole pieces or whole grams.
std::string largestPortionText(double portion, const Recipe& recipe) {
    const std::string number = numberAt(0, portion, Direction::Floor);
    if (!recipe.portionPieces) return "; the largest portion is " + number + " g";
    if (portion < 1) return "; not one " + recipe.pieceWord + " meets it";
    return "; the largest portion is " + number + " " +
           (number == "1" ? recipe.pieceWord : recipe.piecesWord);
}

}  // namespace

std::string targetRow(const TargetVerdict& verdict, const Recipe& recipe) {
    const ComponentFacts& facts = factsOf(verdict.target.component);
    const bool ceiling = verdict.target.atMost.has_value();
    const Decimal limit = ceiling ? *verdict.target.atMost : *verdict.target.atLeast;
    const std::string_view state = verdict.state == TargetState::Met         ? "met"
                                   : verdict.state == TargetState::ValueOnly ? "not safely met"
                                                                             : "not met";
    std::string row =
        fmt::format("{} of {} {} {} per {}: {}; {}; probability {}", ceiling ? "ceiling" : "floor",
                    limit.text(), facts.unit, facts.name, nameOf(verdict.target.per), state,
                    decidingEnd(verdict, facts.decimals), probabilityText(verdict));
    if (verdict.largestPortion) row += largestPortionText(*verdict.largestPortion, recipe);
    return row;
}

}  // namespace nettare
