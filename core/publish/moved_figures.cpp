#include "core/publish/moved_figures.h"

#include <fmt/format.h>

#include <array>

#include "core/label/label_interval.h"
#include "core/label/us_rounding.h"
#include "core/publish/number_text.h"
#include "core/publish/panel_of.h"

namespace nettare {

namespace {

constexpr std::array kPublishedBases{Basis::Piece, Basis::Portion, Basis::Hundred};

/// As the figures page prints it, without its ±.
std::string printOf(const Figure& figure) {
    if (!figure.complete()) return figureText(figure);
    const ComponentFacts& facts = factsOf(figure.component);
    return fmt::format("{} {}", numberAt(facts.decimals, figure.value), facts.unit);
}

/// Whether all that the figure can be is among what the print stands for: a number for the values
/// that round to it, bounds for all between them.
bool isWithinPrint(const Figure& is, const Figure& was) {
    const int decimals = factsOf(was.component).decimals;
    if (was.complete()) {
        const std::string print = numberAt(decimals, was.value);
        return is.atMost && numberAt(decimals, is.atLeast) == print &&
               numberAt(decimals, *is.atMost) == print;
    }
    const auto stepped = [decimals](double value, Direction direction) {
        return steppedTo(Decimal::fromDouble(value), Decimal{1, -decimals}, direction);
    };
    if (Decimal::fromDouble(is.atLeast) < stepped(was.atLeast, Direction::Floor)) return false;
    return !was.atMost || (is.atMost && Decimal::fromDouble(*is.atMost) <=
                                            stepped(*was.atMost, Direction::Ceiling));
}

void addMovedOfPage(const Figures& before, const Figures& after, std::vector<MovedFigure>& moved) {
    for (const Figure& was : before.figures) {
        const Figure& is = after[was.component];
        if (!isWithinPrint(is, was))
            moved.push_back({was.component, before.basis, false, printOf(was), printOf(is),
                             was.value, is.value});
    }
}

bool lies(double value, const DecimalInterval& within) {
    return within.contains(Decimal::fromDouble(value));
}

/// What the panel would print; the bounds where they print differently.
std::string panelPrint(const Figure& figure, std::string_view unit) {
    const auto low = usAmountText(figure.component, figure.atLeast);
    const auto high = figure.atMost ? usAmountText(figure.component, *figure.atMost) : low;
    if (!figure.atMost || !low || !high || *low != *high) return figureText(figure);
    return fmt::format("{}{}", *low, unit);
}

/// One line: it moves where either end of its amount leaves what the print stands for.
void addIfMoved(Component component, const std::string& printed, const Figure& was,
                const Figure& is, std::vector<MovedFigure>& moved) {
    const auto text = usAmountText(component, was.atLeast);
    if (!text || !printed.starts_with(*text)) return;
    const auto within = printedInterval(LabelRules::Us, component, *text);
    if (!within) return;
    if (is.atMost && lies(is.atLeast, *within) && lies(*is.atMost, *within)) return;
    const std::string_view unit = std::string_view{printed}.substr(text->size());
    moved.push_back(
        {component, Basis::Portion, true, printed, panelPrint(is, unit), was.value, is.value});
}

void addMovedOfPanel(const Panel& panel, const Figures& before, const Figures& after,
                     std::vector<MovedFigure>& moved) {
    using enum Component;
    addIfMoved(ENERC_KCAL, panel.calories, before[ENERC_KCAL], after[ENERC_KCAL], moved);
    for (const auto* lines : {&panel.lines, &panel.vitamins})
        for (const PanelLine& line : *lines)
            addIfMoved(line.component, line.amount, before[line.component], after[line.component],
                       moved);
}

}  // namespace

Result<std::vector<MovedFigure>> movedFigures(const Dossier& before, const Dossier& after) {
    const auto cookedBefore = cook(before);
    if (!cookedBefore) return fail(cookedBefore.error());
    const auto cookedAfter = cook(after);
    if (!cookedAfter) return fail(cookedAfter.error());
    std::vector<MovedFigure> moved;
    for (const Basis basis : kPublishedBases) {
        const auto was = figuresPer(basis, before, *cookedBefore);
        const auto is = figuresPer(basis, after, *cookedAfter);
        // A basis that the recipe does not have, such as grams of a dish that was not weighed.
        if (!was || !is) continue;
        addMovedOfPage(*was, *is, moved);
        if (basis != Basis::Portion) continue;
        if (const auto panel = usPanelOf(before, *cookedBefore))
            addMovedOfPanel(*panel, *was, *is, moved);
    }
    return moved;
}

std::string placeText(const MovedFigure& moved, const Recipe& recipe) {
    if (moved.onPanel) return "on the panel";
    switch (moved.basis) {
        case Basis::Piece:
            return "per " + recipe.pieceWord;
        case Basis::Portion:
            return "per portion";
        case Basis::Hundred:
            return "per 100 g";
        case Basis::Batch:
            return "per batch";
    }
    return {};
}

}  // namespace nettare
