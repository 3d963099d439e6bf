#pragma once

#include <string>
#include <string_view>

#include "core/quantity/fraction.h"
#include "core/support/result.h"

namespace nettare {

/// What a cook typed as an amount: exact, kept with its own text, never a double before the
/// figures. A range ("2-3") has low < high; otherwise both are equal.
class Amount {
public:
    /// Both ends above zero, low <= high, with the text they were read from; not checked here.
    Amount(Fraction low, Fraction high, std::string text)
        : low_{low}, high_{high}, text_{std::move(text)} {}

    /// The ends, in the unit that the line states beside the amount.
    [[nodiscard]] Fraction low() const { return low_; }
    [[nodiscard]] Fraction high() const { return high_; }
    [[nodiscard]] bool isRange() const { return low_ != high_; }
    /// Middle of the range, or the amount itself.
    [[nodiscard]] double middle() const { return (low_.value() + high_.value()) / 2; }
    /// Exactly as typed.
    [[nodiscard]] const std::string& text() const { return text_; }

private:
    Fraction low_, high_;
    std::string text_;
};

/// Which mark groups thousands where the text was written; the other one is then the decimal mark.
enum class GroupMark {
    Unknown,  ///< nothing is known: "1,500" is refused, not guessed
    Comma,    ///< 1,500.5
    Point,    ///< 1.500,5
};

/// Reads `1/4`, `1 1/2`, `½`, `1½`, `2-3`, `2–3`, `1,5`, `1.5`, `12`. Positive, at most 9 digits
/// before and 6 after the mark. A mark followed by exactly three digits and preceded by one to
/// three that do not begin with 0 (`1,500`) is AmountAmbiguous unless `group` decides it; both
/// readings are named, in the values "decimal" and "grouped".
/// Fails beside that: EmptyText; NotAnAmount; AmountTooLong, also beyond 40 bytes;
/// AmountNotPositive; RangeReversed. All but EmptyText quote the text in "found".
[[nodiscard]] Result<Amount> readAmount(std::string_view text,
                                        GroupMark group = GroupMark::Unknown);

/// A fraction as cooks write it: "1 1/2", "3/4", "2".
[[nodiscard]] std::string writeFraction(Fraction fraction);

}  // namespace nettare
