#include "core/nutrition/block.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/nutrition/block_parts.h"

namespace nettare {

namespace {

/// Sensitivity of all components to the grams that a label speaks of: every label amount is printed
/// / these grams.
void dependOnLabel(Block& block, const Composition& composition, const Leaf& leaf) {
    if (!composition.labelGrams) return;
    const double grams = leaf.grams.value();
    for (const LinearForm::Term& term : composition.labelGrams->terms()) {
        double* row = block.row(term.source);
        for (std::size_t k = 0; k < kComponentCount; ++k) {
            const ComponentAmount& amount = composition.amounts[k];
            if (!amount.onLabel || (leaf.drip && block.dripMissing[k])) continue;
            const double part =
                -grams * amount.perGram / composition.labelGrams->value() * term.sensitivity;
            const double sum = row[k] + part;
            row[k] = std::fabs(sum) <= 1e-12 * std::fabs(part) ? 0 : sum;
        }
    }
}

/// A missing part is bounded; what ran off without a bound may take away all there is, and adds
/// nothing.
void addMissing(Block& block, const ComponentAmount& amount, std::size_t k, std::size_t food,
                double grams) {
    block.missingGrams[k] += std::fabs(grams);
    auto& missing = block.missingFoods[k];
    if (std::ranges::find(missing, food) == missing.end()) missing.push_back(food);
    const bool open = !amount.high || (grams < 0 && block.dripMissing[k]);
    const double most = amount.high.value_or(0) * grams;
    const double least = amount.low * grams;
    if (open && grams < 0) {
        block.missingLow[k] = -std::numeric_limits<double>::infinity();
        return;
    }
    block.missingLow[k] += std::min(least, most);
    block.missingHigh[k] += std::max(least, most);
    if (open && grams > 0) block.unbounded[k] = true;
}

void addAmounts(Block& block, const Composition& composition, const Leaf& leaf) {
    const double grams = leaf.grams.value();
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        const ComponentAmount& amount = composition.amounts[k];
        if (amount.origin == Origin::Missing || (leaf.drip && block.dripMissing[k])) {
            addMissing(block, amount, k, leaf.food, grams);
            continue;
        }
        // A label amount is servings x printed: grams / serving first keeps it exact.
        const double label = amount.onLabel ? composition.labelGrams->value() : 1;
        block.known[k] +=
            amount.onLabel ? grams / label * (amount.perGram * label) : grams * amount.perGram;
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

/// Index of the source, or their number. Lines of one kept recipe ask for the same sources in the
/// same order, so that the search most often begins where it ends.
std::size_t placeOf(const Block& block, const SourceKey& key) {
    const std::size_t count = block.sources.size();
    const std::size_t from = std::min(block.askedNext, count);
    for (std::size_t i = from; i < count; ++i)
        if (block.sources[i].key == key) return i;
    for (std::size_t i = 0; i < from; ++i)
        if (block.sources[i].key == key) return i;
    return count;
}

void addLeaf(Block& block, const Leaf& leaf, const Composition& composition) {
    const double grams = leaf.grams.value();
    addAmounts(block, composition, leaf);
    for (const LinearForm::Term& term : leaf.grams.terms()) {
        double* row = block.row(term.source);
        if (term.sensitivity == 0) continue;  // such as of a kept recipe that is used whole
        for (std::size_t k = 0; k < kComponentCount; ++k)
            if (!leaf.drip || !block.dripMissing[k])
                row[k] += term.sensitivity * composition.amounts[k].perGram;
    }
    dependOnLabel(block, composition, leaf);
    auto same = std::ranges::find(block.foods, leaf.food, &Block::FoodPart::food);
    if (same == block.foods.end()) same = block.foods.insert(same, {leaf.food, 0});
    same->grams += grams;
    if (leaf.drip) same->drip += grams;
}

}  // namespace

double* Block::row(const Source& source) {
    const std::size_t index = placeOf(*this, source.key);
    if (index == sources.size()) {
        linkToPool(*this, source.pool);
        sources.push_back(source);
        sensitivities.resize(sources.size() * kComponentCount, 0.0);
    }
    askedNext = index + 1;
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

// What ran off comes last, when it is known what was there.
Block batchBlock(const Eaten& eaten, const std::vector<Composition>& compositions) {
    Block block;
    for (const Leaf& leaf : eaten.leaves)
        if (!leaf.drip) addLeaf(block, leaf, compositions[leaf.food]);
    markDripMissing(block, eaten, compositions);
    for (const Leaf& leaf : eaten.leaves)
        if (leaf.drip) addLeaf(block, leaf, compositions[leaf.food]);
    for (const UnknownResidue& residue : eaten.unknown)
        subtractUnknown(block, residue, compositions);
    block.totalGrams = eaten.used.value();
    return block;
}

LinearForm waterChange(const Eaten& eaten) {
    LinearForm change = eaten.keptChange;
    change.add(eaten.pouredOff, -1);
    if (eaten.cooked) change.add(*eaten.cooked).add(eaten.used, -1);
    return change;
}

void takeWater(Block& batch, const Eaten& eaten) {
    constexpr std::size_t kWater = indexOf(Component::WATER);
    const LinearForm change = waterChange(eaten);
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
