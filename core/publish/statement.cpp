#include "core/publish/statement.h"

#include <fmt/core.h>

#include "core/publish/basis_text.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

/// From the unrounded piece: two pieces are never twice a rounded one. A lower bound rounds down.
std::string oneMultiple(const Figure& figure, const Recipe& recipe, Count count) {
    const ComponentFacts& facts = factsOf(figure.component);
    const bool open = !figure.complete();
    const double value = (open ? figure.atLeast : figure.value) * count.value();
    return fmt::format(
        "{} {} {} {}{} {}", writeFraction(count.exact()), pieceWordFor(count, recipe),
        count.isAtMostOne() ? "has" : "have", open ? "at least " : "",
        numberAt(facts.decimals, value, open ? Direction::Floor : Direction::Nearest), facts.unit);
}

/// What is counted, where the unit alone does not say it.
std::string ofWhat(const ComponentFacts& facts) {
    const bool energy =
        facts.component == Component::ENERC_KCAL || facts.component == Component::ENERC_KJ;
    return energy ? std::string{} : fmt::format(" of {}", facts.name);
}

}  // namespace

std::string statementText(const Figure& perPiece, const Recipe& recipe,
                          const std::vector<Count>& pieces,
                          const std::vector<UncountedLine>& uncounted) {
    const ComponentFacts& facts = factsOf(perPiece.component);
    std::string sentence;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (i > 0) sentence += i + 1 == pieces.size() ? " and " : ", ";
        sentence += oneMultiple(perPiece, recipe, pieces[i]) + ofWhat(facts);
    }
    // One decimal more than the multiples show, so that a reader can follow their rounding.
    const int fine = facts.decimals + 1;
    if (perPiece.complete())
        sentence +=
            fmt::format(". Each number is rounded once, from {} {} a {} ({} at 95 %, this batch).",
                        numberAt(fine, perPiece.value), facts.unit, recipe.pieceWord,
                        halfWidthText(fine, intervalOf(perPiece).halfWidth));
    else
        sentence += fmt::format(". The rest has no data: {}.", knownShareText(perPiece));
    for (const UncountedLine& line : uncounted)
        sentence += line.leftOut ? fmt::format(" Without {}.", line.text())
                                 : fmt::format(" In part: {}.", line.text());
    return sentence;
}

}  // namespace nettare
