#include "core/nutrition/next_act.h"

#include <algorithm>

#include "core/nutrition/open_acts.h"
#include "core/nutrition/tried_act.h"

namespace nettare {

namespace {

/// A copy of the dossier in which one act after the other is tried. Compositions move through every
/// cook, since only a label changes one.
class TriedKitchen {
public:
    TriedKitchen(Component component, Basis basis, const Dossier& dossier, const Cooked& cooked)
        : component_{component}, basis_{basis}, dossier_{dossier}, cooked_{cooked} {
        compositions_ = cooked.compositions;
    }

    /// Half-width of the figure after the act; nothing where it cannot be done.
    std::optional<double> after(const Act& act) {
        const auto putBack = tryAct(act, dossier_, cooked_);
        if (!putBack) return std::nullopt;
        const auto found = act.kind == ActKind::ReadLabel ? withLabel(act.index) : halfWidth();
        putBack();
        return found;
    }

private:
    std::optional<double> withLabel(std::size_t food) {
        auto labelled = compositionOf(dossier_.foods[food], static_cast<std::uint32_t>(food),
                                      dossier_.main().assumptions);
        if (!labelled) return std::nullopt;
        compositions_[food] = std::move(*labelled);
        const auto found = halfWidth();
        compositions_[food] = cooked_.compositions[food];
        return found;
    }

    std::optional<double> halfWidth() {
        auto cooked = cook(dossier_, std::move(compositions_), cooked_.meaning);
        if (!cooked) {
            compositions_ = cooked_.compositions;
            return std::nullopt;
        }
        const auto figures = figuresPer(basis_, dossier_, *cooked);
        compositions_ = std::move(cooked->compositions);
        if (!figures) return std::nullopt;
        return intervalOf((*figures)[component_]).halfWidth;
    }

    Component component_;
    Basis basis_;
    Dossier dossier_;
    const Cooked& cooked_;
    std::vector<Composition> compositions_;
};

}  // namespace

const ActOutcome* NextAct::best() const {
    if (outcomes.empty() || outcomes.front().halfWidth > halfWidth * (1 - kWorthwhile))
        return nullptr;
    return &outcomes.front();
}

Result<NextAct> nextAct(Component component, Basis basis, const Dossier& dossier,
                        const Cooked& cooked) {
    const auto figures = figuresPer(basis, dossier, cooked);
    if (!figures) return fail(figures.error());
    NextAct next;
    next.halfWidth = intervalOf((*figures)[component]).halfWidth;
    next.shares = budgetShares(component, *figures, dossier, cooked);
    if (next.halfWidth == 0) return next;
    TriedKitchen kitchen{component, basis, dossier, cooked};
    for (const Act& act : openActs(component, basis, dossier, cooked, next.shares))
        if (const auto half = kitchen.after(act)) next.outcomes.push_back({act, *half});
    std::ranges::stable_sort(next.outcomes, {}, &ActOutcome::halfWidth);
    return next;
}

}  // namespace nettare
