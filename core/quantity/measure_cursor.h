#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/fraction.h"

namespace nettare {

/// Relative half-width of "about" in lengths and times (decision of ours): about 7 cm is 6.3 to
/// 7.7 cm.
inline constexpr double kAboutRelative = 0.1;

/// Two numbers as typed, low <= high; equal where one was typed.
struct NumberRange {
    Fraction low;
    Fraction high;
};

/// Walks along one short text, "about 2 1/2-inch": numbers, ranges and words in turn. Letters are
/// in lower case, the white spaces, dashes and minus signs of Unicode are ASCII. A step that does
/// not fit answers nothing and stays where it was.
class MeasureCursor {
public:
    explicit MeasureCursor(std::string_view text);

    [[nodiscard]] bool atEnd() const { return rest().empty(); }
    /// What is left, without white space around it.
    [[nodiscard]] std::string_view rest() const;

    /// Takes the words "about", "approx.", "roughly", "around", "circa", "ca.", "~".
    [[nodiscard]] bool takeAbout();
    /// Takes `word` where no letter follows it: "in" is not the front of "inch".
    [[nodiscard]] bool take(std::string_view word);
    /// The first of several words that fits, or "".
    [[nodiscard]] std::string_view takeOneOf(std::initializer_list<std::string_view> words);
    /// Takes "-", "to" or "or" between two ends of a range.
    [[nodiscard]] bool takeRangeMark();

    /// "2", "2.5", "2,5", "1/2", "1 1/2", "1-1/2", "1½", "½", "0". No sign, no exponent; what could
    /// also be thousands ("1,500") is no number here.
    [[nodiscard]] std::optional<Fraction> takeNumber();
    /// A number with or without a minus, for temperatures.
    [[nodiscard]] std::optional<Fraction> takeSignedNumber();
    /// A number or a range, "25-30", "1 to 1 1/2"; nothing for one that runs backwards.
    [[nodiscard]] std::optional<NumberRange> takeRange();

    /// Where the cursor is, to come back to.
    [[nodiscard]] std::size_t place() const { return at_; }
    void backTo(std::size_t place) { at_ = place; }

private:
    void skipSpaces();
    [[nodiscard]] std::size_t digitsFrom(std::size_t at) const;
    [[nodiscard]] std::size_t fractionEnd(std::size_t at) const;
    [[nodiscard]] std::size_t numberEnd() const;

    std::string text_;
    std::size_t at_ = 0;
};

}  // namespace nettare
