#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/quantity/fraction.h"

namespace nettare {

/// A vulgar fraction that has a character of its own; the sign is two or three bytes of UTF-8.
struct FractionSign {
    std::string_view sign;
    int numerator, denominator;

    [[nodiscard]] Fraction value() const { return *Fraction::make(numerator, denominator); }
};

/// Unicode vulgar fractions (code charts, Latin-1 and Number Forms) from eighths to halves.
[[nodiscard]] std::span<const FractionSign> fractionSigns();

/// The sign that the text begins with; null where it begins with none.
[[nodiscard]] const FractionSign* signAtFront(std::string_view text);
/// The sign that the text ends with.
[[nodiscard]] const FractionSign* signAtEnd(std::string_view text);

/// A fraction as printed pages have it: "1½", "⅔", "2"; as writeFraction() where there is no sign.
[[nodiscard]] std::string writeFractionSign(Fraction fraction);

}  // namespace nettare
