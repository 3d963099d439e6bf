#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/publish/compared_state.h"

namespace nettare {

/// Why a difference says nothing.
enum class WhyNotComparable {
    Meaning,       ///< one is of the recipe mean, the other of this batch
    Counting,      ///< what the recipe leaves open counts by other rules
    Residue,       ///< what was left over was weighed on one side only
    CookedWeight,  ///< so was the dish, and the figure is divided by its weight
    MissingParts   ///< some foods have no data
};

/// A reason with what it is about.
struct NotComparable {
    WhyNotComparable why{};
    std::string what{};                ///< "optional lines", "what stayed in the bowl"
    std::vector<std::string> foods{};  ///< without data
    bool before = true, after = true;  ///< on which side it was weighed, or has no data

    friend bool operator==(const NotComparable&, const NotComparable&) = default;
};

/// Why one component of one basis cannot be compared; nothing where it can.
class Comparability {
public:
    /// What the states refer to and the figures must outlive this; figures of the same basis.
    Comparability(const ComparedState& before, const Figures& figuresBefore,
                  const ComparedState& after, const Figures& figuresAfter);

    [[nodiscard]] std::optional<NotComparable> reasonAgainst(Component component) const;

private:
    [[nodiscard]] std::optional<NotComparable> ofResidues(Component component) const;
    [[nodiscard]] std::optional<NotComparable> ofCookedWeight(Component component) const;
    [[nodiscard]] std::optional<NotComparable> ofMissing(Component component) const;

    ComparedState before_;
    const Figures& figuresBefore_;
    ComparedState after_;
    const Figures& figuresAfter_;
    std::optional<NotComparable> general_;  ///< holds for every component
};

}  // namespace nettare
