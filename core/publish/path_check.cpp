#include "core/publish/path_check.h"

#include <fmt/core.h>

#include "core/nutrition/next_act.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

constexpr std::size_t kMostShares = 6;
constexpr double kLeastShare = 0.02;

std::string sharesText(Component component, const Figures& figures, const Dossier& dossier,
                       const Cooked& cooked) {
    const Figure& figure = figures[component];
    if (figure.u == 0) return {};
    std::string text =
        fmt::format("\nWhat makes it {}\n",
                    halfWidthText(factsOf(component).decimals, intervalOf(figure).halfWidth));
    const auto shares =
        largestShares(budgetShares(component, figures, dossier, cooked), kMostShares, kLeastShare);
    for (const BudgetShare& share : shares)
        text += fmt::format("  {:>3} %  {}\n", numberAt(0, 100 * share.share), share.name);
    return text;
}

std::string_view reasonText(SimulationReason reason) {
    switch (reason) {
        case SimulationReason::Rectangle:
            return "one source that may lie anywhere between two ends makes more than half of "
                   "the variance";
        case SimulationReason::FewReadings:
            return "a spread rests on fewer than four degrees of freedom";
        case SimulationReason::Disagreement:
            return "the two differ within the two digits that an uncertainty has";
    }
    return {};
}

/// "126 to 161 kcal", the ends rounded outwards; an open end says so.
std::string endsText(Component component, const FigureInterval& interval) {
    const ComponentFacts& facts = factsOf(component);
    const std::string low = numberAt(facts.decimals, interval.low, Direction::Floor);
    if (!interval.high) return fmt::format("at least {} {}", low, facts.unit);
    return fmt::format("{} to {} {}", low,
                       numberAt(facts.decimals, *interval.high, Direction::Ceiling), facts.unit);
}

std::string simulationText(Component component, const Figures& figures, const Cooked& cooked,
                           const Simulation& simulation) {
    const Figure& figure = figures[component];
    const FigureInterval known = intervalOf(figure);
    std::string text =
        fmt::format("\nChecked another way\n  {} simulated {}: {} in 95 % of them.\n",
                    numberAt(0, static_cast<double>(simulation.trials)),
                    cooked.meaning == Meaning::AnyPiece ? "pieces" : "batches",
                    endsText(component, intervalOf(figure, simulation)));
    const bool same =
        agree(figure.u, figure.value - known.halfWidth, figure.value + known.halfWidth, simulation);
    text += same ? "  The law of propagation says the same to two digits of the uncertainty.\n"
                 : fmt::format("  The law of propagation says {}.\n", endsText(component, known));
    if (const auto reason = reasonToShow(component, figures, cooked, simulation))
        text += fmt::format("  The simulated interval is the one to publish: {}.\n",
                            reasonText(*reason));
    return text;
}

}  // namespace

Result<std::string> pathCheckText(Component component, const Figures& figures,
                                  const Dossier& dossier, const Cooked& cooked,
                                  const std::optional<Simulation>& simulation) {
    std::string text = sharesText(component, figures, dossier, cooked);
    const auto next = nextAct(component, figures.basis, dossier, cooked);
    if (!next) return fail(next.error());
    if (const ActOutcome* best = next->best())
        text += fmt::format("\nNext: {}\n  {}\n", actText(best->act, dossier),
                            outcomeText(component, *next));
    else if (figures[component].u > 0)
        text += fmt::format("\nNothing to weigh\n  {}\n", outcomeText(component, *next));
    if (simulation) text += simulationText(component, figures, cooked, *simulation);
    return text;
}

}  // namespace nettare
