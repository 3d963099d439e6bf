#pragma once

#include <cstdint>
#include <string_view>

namespace nettare {

/// What a word says about a number.
enum class NumberWordKind {
    Count,    ///< "two"
    Article,  ///< "a", "an": one
    Half,     ///< "half", and "one-half", which needs no further word
    Share,    ///< "third", "quarters": with a number before it
    Group,    ///< "dozen", "couple"
    Vague,    ///< "few", "several": a range by convention, which the reading marks as assumed
};

struct NumberWord {
    std::string_view word;
    NumberWordKind kind;
    std::int64_t numerator, denominator;  ///< its value; of a vague word the low end
    std::int64_t high;                    ///< of a vague word, else 0
};

/// Null for other words.
[[nodiscard]] const NumberWord* numberWord(std::string_view lower);

}  // namespace nettare
