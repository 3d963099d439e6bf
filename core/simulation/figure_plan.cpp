#include "core/simulation/figure_plan.h"

#include <algorithm>
#include <cmath>

#include "core/nutrition/block_parts.h"
#include "core/nutrition/pieces.h"
#include "core/simulation/sum_tile.h"

namespace nettare {

namespace {

/// Puts a plan together sum by sum. Sources and pools are numbered as they come.
class PlanMaker {
public:
    PlanMaker(Component component, const Figures& figures, const Dossier& dossier,
              const Cooked& cooked)
        : k_{indexOf(component)}, figures_{figures}, dossier_{dossier}, cooked_{cooked} {}

    [[nodiscard]] FigurePlan make() {
        addFoods();
        for (const UnknownResidue& residue : cooked_.eaten.unknown) takeUnknown(residue);
        if (k_ == indexOf(Component::WATER)) addWater();
        divide();
        const double value = valueWithoutDeviation(plan_);
        if (value < 0) plan_.shift = -value;
        return std::move(plan_);
    }

private:
    std::size_t addSum(double value) {
        plan_.sums.push_back(value);
        return plan_.sums.size() - 1;
    }

    std::size_t addSum(const LinearForm& form) {
        const std::size_t sum = addSum(form.value());
        for (const LinearForm::Term& term : form.terms()) move(term.source, sum, term.sensitivity);
        return sum;
    }

    [[nodiscard]] std::optional<std::size_t> poolOf(const Source& source) {
        if (std::isinf(source.freedom)) return std::nullopt;
        const auto found = std::ranges::find(poolKeys_, source.pool);
        const auto pool = static_cast<std::size_t>(found - poolKeys_.begin());
        if (found == poolKeys_.end()) {
            poolKeys_.push_back(source.pool);
            plan_.pools.push_back(source.freedom);
        }
        return pool;
    }

    void move(const Source& source, std::size_t sum, double sensitivity) {
        const double u = source.uFor(figures_.block.meaning);
        if (u == 0 || sensitivity == 0) return;
        auto found = std::ranges::find(plan_.sources, source.key,
                                       [](const auto& drawn) { return drawn.source.key; });
        if (found == plan_.sources.end()) {
            plan_.sources.push_back({source, poolOf(source)});
            found = std::prev(plan_.sources.end());
            found->source.u = u;
        }
        found->targets.push_back({sum, sensitivity});
    }

    /// Lines of one food share what it holds, so their grams are one sum.
    void addFoods() {
        std::vector<std::pair<std::size_t, LinearForm>> foods;
        for (const Leaf& leaf : cooked_.eaten.leaves) {
            if (leaf.drip && figures_.block.dripMissing[k_]) continue;
            const auto same =
                std::ranges::find(foods, leaf.food, [](const auto& food) { return food.first; });
            if (same == foods.end())
                foods.emplace_back(leaf.food, leaf.grams);
            else
                same->second.add(leaf.grams);
        }
        for (const auto& [food, grams] : foods) addFood(cooked_.compositions[food], grams);
    }

    void addFood(const Composition& composition, const LinearForm& grams) {
        const ComponentAmount& amount = composition.amounts[k_];
        if (amount.origin == Origin::Missing) return;
        const double serving = amount.onLabel ? composition.labelGrams->value() : 1;
        LinearForm perServing{amount.perGram * serving};
        for (const CompositionSource& entry : composition.sources)
            for (const Effect& effect : entry.effects)
                if (indexOf(effect.component) == k_)
                    perServing.depend(entry.source, effect.perGram * serving);
        if (perServing.value() == 0 && perServing.terms().empty()) return;
        known_ += grams.value() * amount.perGram;
        FigurePlan::Product product{addSum(grams), addSum(perServing), {}};
        if (amount.onLabel) {
            product.serving = addSum(*composition.labelGrams);
        }
        plan_.products.push_back(product);
    }

    /// What such a residue holds per gram lies anywhere in the range that the figure has for it.
    void takeUnknown(const UnknownResidue& residue) {
        const double grams = residue.grams.value();
        const UnknownRange range = rangeOf(residue, k_, known_, cooked_.compositions);
        const double middle = (range.low + range.high) / 2;
        known_ -= middle;
        if (grams <= 0 || range.high == 0) return;
        LinearForm perGram{-middle / grams};
        perGram.depend(rectangle({SourceKind::ResidueMakeup, 0, residue.number}, rectangular(1)),
                       (range.high - range.low) / grams);
        plan_.products.push_back({addSum(residue.grams), addSum(perGram), {}});
    }

    void addWater() {
        plan_.plain = addSum(waterChange(cooked_.eaten));
        plan_.neverNegative = figures_.block.missingFoods[k_].empty();
    }

    void divideByPieces(double pieces) {
        plan_.factor = pieces;
        plan_.divisor = addSum(piecesOf(dossier_, 0));
        if (figures_.block.meaning != Meaning::AnyPiece) return;
        const auto& sources = figures_.block.sources;
        const auto share = std::ranges::find(sources, SourceKind::PieceShare,
                                             [](const Source& source) { return source.key.kind; });
        if (share == sources.end()) return;
        plan_.share = addSum(1);
        move(*share, *plan_.share, 1 / std::sqrt(pieces));
    }

    void divide() {
        const Recipe& recipe = dossier_.main();
        const Eaten& eaten = cooked_.eaten;
        if (figures_.basis == Basis::Piece) divideByPieces(1);
        if (figures_.basis == Basis::Portion && recipe.portionPieces)
            divideByPieces(recipe.portionPieces->value());
        const bool portionInGrams = figures_.basis == Basis::Portion && !recipe.portionPieces;
        if (!portionInGrams && figures_.basis != Basis::Hundred) return;
        plan_.factor = portionInGrams ? recipe.portionGrams->value() : 100;
        plan_.divisor = addSum(eaten.cooked.value_or(eaten.used));
    }

    std::size_t k_;
    const Figures& figures_;
    const Dossier& dossier_;
    const Cooked& cooked_;
    FigurePlan plan_;
    std::vector<SourceKey> poolKeys_;
    double known_ = 0;  ///< of the batch, as far as it is put together
};

}  // namespace

FigurePlan planOf(Component component, const Figures& figures, const Dossier& dossier,
                  const Cooked& cooked) {
    return PlanMaker{component, figures, dossier, cooked}.make();
}

}  // namespace nettare
