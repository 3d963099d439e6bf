#pragma once

#include <optional>
#include <vector>

#include "core/label/check_label_clashes.h"

namespace nettare {

/// A way in which a figure was mistyped or misread, undone.
struct SlipCandidate {
    Decimal figure;   ///< as it likely is on the package, with its decimals
    double unlikely;  ///< how rare the slip is, as -ln of its share, up to a constant
};

/// All figures from which one slip makes the printed one: another digit, a digit dropped or typed
/// twice or too many, two neighbours exchanged, the decimal point lost, moved or put in.
[[nodiscard]] std::vector<SlipCandidate> slipCandidates(Decimal printed);

/// The likeliest slip that removes a clash and raises no other: in one of the lines given, or in
/// the size of the serving. Ranked by how well the whole label then agrees and how common the slip
/// is. Nothing where none does.
[[nodiscard]] std::optional<LabelSlip> likelySlip(const LabelNumbers& numbers,
                                                  const LabelSurroundings& surroundings,
                                                  const std::vector<LabelClash>& clashes,
                                                  const LabelClash& clash);

/// The same for an amount that no rounding prints; the nearest ones that a rounding prints are
/// tried as well.
[[nodiscard]] std::optional<LabelSlip> likelySlip(const LabelNumbers& numbers,
                                                  const LabelSurroundings& surroundings,
                                                  const std::vector<LabelClash>& clashes,
                                                  const LabelAmount& unlawful);

}  // namespace nettare
