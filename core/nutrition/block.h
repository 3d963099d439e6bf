#pragma once

#include <optional>
#include <vector>

#include "core/nutrition/composition.h"
#include "core/nutrition/leaves.h"

namespace nettare {

/// The figures of a batch before they are combined: one column per component. Sensitivities to
/// grams are dense rows [source][component]; a food's own composition moves only a few components,
/// so its sources stay with the food and are scaled by its total grams. (Dense rows for both were
/// ten times the numbers.)
struct Block {
    Meaning meaning = Meaning::ThisBatch;  ///< of the figures that follow from it
    PerComponent<double> known{};          ///< sum of the known parts
    PerComponent<double> missingLow{};     ///< added to `known` it is the lower bound
    PerComponent<double> missingHigh{};
    PerComponent<bool> unbounded{};       ///< a missing part has no upper bound
    PerComponent<double> missingGrams{};  ///< weight put in or taken out whose component is missing
    PerComponent<std::vector<std::size_t>>
        missingFoods;  ///< indices, in canonical order, each once
    double totalGrams = 0;

    std::vector<Source> sources;
    std::vector<double> sensitivities;  ///< [source][component]

    /// Sources of one pool, chained in their order: the next one after each, and whether a source
    /// begins its chain.
    struct PoolLink {
        bool first = true;
        std::optional<std::size_t> next{};
    };
    std::vector<PoolLink> poolLinks;

    struct FoodPart {
        std::size_t food;
        double grams;     ///< put in less what ran off
        double drip = 0;  ///< of that, what ran off; zero or below
    };
    std::vector<FoodPart> foods;
    double scale = 1;  ///< of `foods` grams; known, bounds and rows are scaled already
    /// Components of which the drip's food has more than all lines together: its value cannot be
    /// that of what ran off and counts as missing.
    PerComponent<bool> dripMissing{};

    /// Grams of a part that move a component, unscaled.
    [[nodiscard]] double gramsFor(const FoodPart& part, std::size_t component) const {
        return dripMissing[component] ? part.grams - part.drip : part.grams;
    }

    /// Sensitivities of all components to a source; it gets a row where it has none yet.
    [[nodiscard]] double* row(const Source& source);
    std::size_t askedNext = 0;  ///< the row that is most likely asked for next: after the last one
};

/// Compositions of all foods of a dossier.
[[nodiscard]] Result<std::vector<Composition>> compositionsOf(const Dossier& dossier);

/// Amounts of the whole batch and their sensitivities, before water is taken.
[[nodiscard]] Block batchBlock(const Eaten& eaten, const std::vector<Composition>& compositions);

/// Takes cooking water that was poured off, and what the dish and the kept recipes in it gained or
/// lost in cooking, as water: with a cooked weight WATER changes by cooked - used grams, never
/// below zero (Greenfield and Southgate, Food composition data, FAO, chapter on dishes from
/// recipes). Fat that dripped off is weighed apart and gone before.
void takeWater(Block& batch, const Eaten& eaten);

/// Grams of water that takeWater() adds; negative where it went.
[[nodiscard]] LinearForm waterChange(const Eaten& eaten);

/// The block times an exact factor: one piece is 1/N of the batch.
[[nodiscard]] Block scaled(Block block, double factor);

/// The block per `grams` of a weight that is itself uncertain: 100 g, or a portion in grams.
[[nodiscard]] Block perWeight(Block block, double grams, const LinearForm& weight);

}  // namespace nettare
