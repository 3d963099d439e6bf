#include <algorithm>
#include <array>
#include <string>

#include "core/nutrition/block_parts.h"
#include "core/recipe/dossier.h"

namespace nettare {

namespace {

using enum Component;

/// What is weighed in grams and makes up what runs off. A trace that a drip's food has more of than
/// the lines is no slip of a reading.
constexpr std::array kMainParts{WATER, PROCNT, FAT, CHOCDF, ALC};

/// Below this share of what ran off it is rounding of doubles.
constexpr double kRounding = 1e-9;

std::string gramsText(double grams) {
    return roundedToStep(Decimal::fromDouble(grams), {1, -1}).text();
}

Error atResidue(ErrorCode code, const Dossier& dossier, std::uint32_t number, double left,
                double there) {
    const Recipe& recipe = dossier.recipes[number / 65536];
    Error error{code};
    error.file = recipe.file;
    error.pointer = recipe.residues[number % 65536].pointer;
    return error.with("left", gramsText(left)).with("there", gramsText(std::max(0.0, there)));
}

/// Grams of a component that ran off, by the known values.
double ranOff(const Eaten& eaten, std::size_t k, const std::vector<Composition>& compositions) {
    double sum = 0;
    for (const Leaf& leaf : eaten.leaves)
        if (leaf.drip && compositions[leaf.food].amounts[k].origin != Origin::Missing)
            sum -= leaf.grams.value() * compositions[leaf.food].amounts[k].perGram;
    return sum;
}

/// The residue with the most of a component among the drips.
std::uint32_t mostOf(const Eaten& eaten, std::size_t k,
                     const std::vector<Composition>& compositions) {
    double most = -1;
    std::uint32_t number = 0;
    for (const Leaf& leaf : eaten.leaves) {
        if (!leaf.drip) continue;
        const double part = -leaf.grams.value() * compositions[leaf.food].amounts[k].perGram;
        if (part <= most) continue;
        most = part;
        number = *leaf.drip;
    }
    return number;
}

std::optional<Error> drippedTooMuch(const Dossier& dossier, const Block& batch, const Eaten& eaten,
                                    const std::vector<Composition>& compositions) {
    for (const Component component : kMainParts) {
        const std::size_t k = indexOf(component);
        if (!batch.dripMissing[k] || batch.unbounded[k]) continue;
        const double left = ranOff(eaten, k, compositions);
        const double there = batch.known[k] + batch.missingHigh[k];
        if (there >= left) continue;
        return atResidue(ErrorCode::DripTooLarge, dossier, mostOf(eaten, k, compositions), left,
                         there)
            .with("component", factsOf(component).name);
    }
    return std::nullopt;
}

}  // namespace

void markDripMissing(Block& block, const Eaten& eaten,
                     const std::vector<Composition>& compositions) {
    if (std::ranges::none_of(eaten.leaves, [](const Leaf& leaf) { return leaf.drip.has_value(); }))
        return;
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        const double left = ranOff(eaten, k, compositions);
        block.dripMissing[k] = left > block.known[k] + kRounding * left;
    }
}

std::optional<Error> overdrawn(const Dossier& dossier, const Block& batch, const Eaten& eaten,
                               const std::vector<Composition>& compositions) {
    if (auto error = drippedTooMuch(dossier, batch, eaten, compositions)) return error;
    constexpr std::size_t kWater = indexOf(WATER);
    const double poured = eaten.pouredOff.value();
    const double there = batch.known[kWater] + batch.missingHigh[kWater];
    if (batch.unbounded[kWater] || poured <= there * (1 + kRounding)) return std::nullopt;
    const std::vector<Residue>& residues = dossier.main().residues;
    const auto found = std::ranges::find(residues, ResidueKind::Water, &Residue::kind);
    // Where a kept recipe poured it off, the recipe that uses it is the place.
    if (found != residues.end())
        return atResidue(ErrorCode::ResidueTooLarge, dossier,
                         numberOf(0, static_cast<std::size_t>(found - residues.begin())), poured,
                         there);
    Error error{ErrorCode::ResidueTooLarge};
    error.file = dossier.main().file;
    return error.at("/lines").with("left", gramsText(poured)).with("there", gramsText(there));
}

}  // namespace nettare
