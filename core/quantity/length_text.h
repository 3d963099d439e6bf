#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/interval.h"
#include "core/quantity/length.h"

namespace nettare {

/// A length as kitchens write it.
struct LengthText {
    Length low, high;       ///< as typed; equal where one number was
    bool about = false;     ///< "about 7 cm"
    std::string dimension;  ///< "across", "thick" ... as typed in lower case; may be empty

    /// In millimetres; "about" widens it by 10 % on either side (decision of ours).
    [[nodiscard]] Interval millimetres() const;
};

/// "7 cm", "5mm", "2-inch", "2\"", "1 1/2 in.", "7-8 cm", "about 7 cm across", "1/2 inch thick". An
/// inch is 25.4 mm exactly (NIST SP 811, B.8). Nothing for other texts and for lengths of zero.
[[nodiscard]] std::optional<LengthText> readLength(std::string_view text);

}  // namespace nettare
