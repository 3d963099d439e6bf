#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/food/label_facts.h"
#include "core/food/profile.h"
#include "core/support/result.h"

namespace nettare {

/// What a label says of one component, per serving, 100 g or 100 mL as the label is.
struct LabelValue {
    /// A printed line it rests on, and what a unit of that line is in the component: 400 mg of
    /// sodium for a gram of salt; 1 of carbohydrate for a gram of fibre.
    struct Part {
        std::size_t amount;  ///< index in LabelFacts::amounts
        double factor;
        double printed, low, high;  ///< of the line, in its own unit
    };

    Component component{};
    std::vector<Part> parts;  ///< one, or carbohydrate and fibre
    double value = 0, low = 0, high = 0;

    /// Nothing but the line of that component itself.
    [[nodiscard]] bool isPlain() const { return parts.size() == 1 && parts.front().factor == 1; }
};

/// The values of a label in the order of its lines. Sodium from salt where no sodium is printed;
/// carbohydrate with fibre from EU carbohydrate where fibre is printed. Parts in grams are
/// at most the label's grams as printed, so that no line gives more than the food. Fails like
/// labelInterval(), and with LabelAmountImpossible for a line that alone is more than those grams
/// can be by rounding and density, at "/declares/2/printed".
[[nodiscard]] Result<std::vector<LabelValue>> labelValues(const LabelFacts& label);

/// Whether the label gives the component, by a line of its own or by what only labels print.
[[nodiscard]] bool labelGives(const LabelFacts& label, Component component);

/// Grams that the amounts are of, as printed: the serving, 100, or millilitres x density.
[[nodiscard]] double labelGrams(const LabelFacts& label);

/// What the label comes to per 100 g, without rounding and bounds: for lists and comparisons.
/// Figures go by the label. Lines that cannot be read are left out.
[[nodiscard]] Profile labelProfile(const LabelFacts& label);

}  // namespace nettare
