#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "core/nutrition/figures.h"
#include "core/simulation/draws.h"

namespace nettare {

/// What most of the uncertainty of a kitchen's figure comes from.
enum class Dominated { BySeries, ByTable, ByLabel };
[[nodiscard]] std::string nameOf(Dominated dominated);

/// Kitchens of one stratum: sodium of a batch of pods that were weighed as a series of so many,
/// times what a table says of them, and, where a label dominates, of a paste that was weighed.
/// Truth is drawn from the laws that the figure states: normal pods, normal lots of which a table
/// publishes mean and standard error, label amount and serving all alike, rounding alike. The
/// readings, the row and the label that the cook sees are simulated from it.
class CoverageKitchens {
public:
    CoverageKitchens(Dominated dominated, int readings, std::uint32_t seed);

    /// The next kitchen: its dossier and the true sodium of its batch, in mg.
    [[nodiscard]] const Dossier& next();
    [[nodiscard]] double truth() const { return truth_; }

private:
    double normal(double mean, double deviation);
    double uniform(double low, double high);
    double drawPods();
    double drawTable();
    double drawLabel();

    Dominated dominated_;
    int readings_;
    Draws draws_;
    Dossier dossier_;
    double truth_ = 0;
};

}  // namespace nettare
