#include "core/nutrition/block.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace nettare {

namespace {

/// Sensitivity of all components to the serving of a label: every label amount is printed /
/// serving.
void dependOnServing(Block& block, const Composition& composition, double grams) {
    if (!composition.servingGrams) return;
    double* row = block.row(composition.servingSource);
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        const ComponentAmount& amount = composition.amounts[k];
        if (!amount.onServing) continue;
        const double part = -grams * amount.perGram / *composition.servingGrams;
        const double sum = row[k] + part;
        row[k] = std::fabs(sum) <= 1e-12 * std::fabs(part) ? 0 : sum;
    }
}

void addAmounts(Block& block, const Composition& composition, std::size_t food, double grams) {
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        const ComponentAmount& amount = composition.amounts[k];
        if (amount.origin != Origin::Missing) {
            // A label amount is servings x printed: grams / serving first keeps it exact.
            block.known[k] += amount.onServing ? grams / *composition.servingGrams *
                                                     (amount.perGram * *composition.servingGrams)
                                               : grams * amount.perGram;
            continue;
        }
        block.missingGrams[k] += std::fabs(grams);
        auto& missing = block.missingFoods[k];
        if (std::ranges::find(missing, food) == missing.end()) missing.push_back(food);
        const bool open = !amount.high;
        const double most = amount.high.value_or(0) * grams;
        const double least = amount.low * grams;
        block.missingLow[k] += std::min(least, most);
        block.missingHigh[k] += std::max(least, most);
        // Drip without a bound may take away all there is, and adds nothing.
        if (open && grams < 0) block.missingLow[k] = -std::numeric_limits<double>::infinity();
        if (open && grams > 0) block.unbounded[k] = true;
    }
}

/// Chains a source that is about to be appended to the last one of its pool.
void linkToPool(Block& block, const SourceKey& pool) {
    const std::size_t appended = block.sources.size();
    std::size_t last = appended;
    while (last > 0 && block.sources[last - 1].pool != pool) --last;
    if (last > 0) block.poolLinks[last - 1].next = appended;
    block.poolLinks.push_back({last == 0, {}});
}

void addLeaf(Block& block, const Leaf& leaf, const Composition& composition) {
    const double grams = leaf.grams.value();
    block.totalGrams += grams;
    addAmounts(block, composition, leaf.food, grams);
    for (const LinearForm::Term& term : leaf.grams.terms()) {
        double* row = block.row(term.source);
        for (std::size_t k = 0; k < kComponentCount; ++k)
            row[k] += term.sensitivity * composition.amounts[k].perGram;
    }
    dependOnServing(block, composition, grams);
    const auto same = std::ranges::find(block.foods, leaf.food, &Block::FoodPart::food);
    if (same != block.foods.end())
        same->grams += grams;
    else
        block.foods.push_back({leaf.food, grams});
}

/// Takes away a residue that may be anything between the leanest and the richest of its foods: the
/// middle of that range, with the range as a rectangle.
void subtractUnknown(Block& block, const UnknownResidue& residue,
                     const std::vector<Composition>& compositions) {
    PerComponent<double> middle{};
    double* makeup =
        block.row(ownSource({SourceKind::ResidueMakeup, 0, residue.number}, rectangular(1)));
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        double low = 0;
        double high = 0;
        bool first = true;
        for (const std::size_t food : residue.foods) {
            const double value = compositions[food].amounts[k].perGram;
            low = first ? value : std::min(low, value);
            high = first ? value : std::max(high, value);
            first = false;
        }
        middle[k] = (low + high) / 2;
        block.known[k] -= residue.grams.value() * middle[k];
        makeup[k] += residue.grams.value() * (high - low);
    }
    for (const LinearForm::Term& term : residue.grams.terms()) {
        double* row = block.row(term.source);
        for (std::size_t k = 0; k < kComponentCount; ++k) row[k] -= term.sensitivity * middle[k];
    }
    block.totalGrams -= residue.grams.value();
}

}  // namespace

double* Block::row(const Source& source) {
    const auto found = std::ranges::find(sources, source.key, &Source::key);
    const auto index = static_cast<std::size_t>(found - sources.begin());
    if (found == sources.end()) {
        linkToPool(*this, source.pool);
        sources.push_back(source);
        sensitivities.resize(sources.size() * kComponentCount, 0.0);
    }
    return &sensitivities[index * kComponentCount];
}

Result<std::vector<Composition>> compositionsOf(const Dossier& dossier) {
    std::vector<Composition> all;
    all.reserve(dossier.foods.size());
    for (std::size_t i = 0; i < dossier.foods.size(); ++i) {
        auto one = compositionOf(dossier.foods[i], static_cast<std::uint32_t>(i),
                                 dossier.main().assumptions);
        if (!one) {
            Error error = one.error().with("food", dossier.foods[i].name);
            error.file = dossier.foods[i].file;
            error.pointer = dossier.foods[i].pointer + error.pointer;
            return fail(error);
        }
        all.push_back(std::move(*one));
    }
    return all;
}

Block batchBlock(const Eaten& eaten, const std::vector<Composition>& compositions) {
    Block block;
    for (const Leaf& leaf : eaten.leaves) addLeaf(block, leaf, compositions[leaf.food]);
    for (const UnknownResidue& residue : eaten.unknown)
        subtractUnknown(block, residue, compositions);
    return block;
}

void takeCookingChange(Block& batch, const Eaten& eaten) {
    if (!eaten.cooked) return;
    constexpr std::size_t kWater = indexOf(Component::WATER);
    LinearForm change = *eaten.cooked;
    change.add(eaten.used, -1);
    batch.known[kWater] += change.value();
    // Where a part is missing the bounds need the whole change; figures clip them at zero.
    if (batch.missingFoods[kWater].empty())
        batch.known[kWater] = std::max(0.0, batch.known[kWater]);
    for (const LinearForm::Term& term : change.terms())
        batch.row(term.source)[kWater] += term.sensitivity;
}

Block scaled(Block block, double factor) {
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        block.known[k] *= factor;
        block.missingLow[k] *= factor;
        block.missingHigh[k] *= factor;
    }
    for (double& sensitivity : block.sensitivities) sensitivity *= factor;
    block.scale *= factor;
    return block;
}

Block perWeight(Block block, double grams, const LinearForm& weight) {
    Block result = scaled(std::move(block), grams / weight.value());
    for (const LinearForm::Term& term : weight.terms()) {
        double* row = result.row(term.source);
        for (std::size_t k = 0; k < kComponentCount; ++k)
            row[k] -= result.known[k] * term.sensitivity / weight.value();
    }
    return result;
}

}  // namespace nettare
