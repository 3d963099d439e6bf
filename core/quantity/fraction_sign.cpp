#include "core/quantity/fraction_sign.h"

#include <array>

#include "core/quantity/amount.h"

namespace nettare {

namespace {

constexpr std::array kFractionSigns{
    FractionSign{"¼", 1, 4}, FractionSign{"½", 1, 2}, FractionSign{"¾", 3, 4},
    FractionSign{"⅓", 1, 3}, FractionSign{"⅔", 2, 3}, FractionSign{"⅕", 1, 5},
    FractionSign{"⅖", 2, 5}, FractionSign{"⅗", 3, 5}, FractionSign{"⅘", 4, 5},
    FractionSign{"⅙", 1, 6}, FractionSign{"⅚", 5, 6}, FractionSign{"⅛", 1, 8},
    FractionSign{"⅜", 3, 8}, FractionSign{"⅝", 5, 8}, FractionSign{"⅞", 7, 8},
};

}  // namespace

std::span<const FractionSign> fractionSigns() {
    return kFractionSigns;
}

const FractionSign* signAtFront(std::string_view text) {
    for (const FractionSign& sign : kFractionSigns)
        if (text.starts_with(sign.sign)) return &sign;
    return nullptr;
}

const FractionSign* signAtEnd(std::string_view text) {
    for (const FractionSign& sign : kFractionSigns)
        if (text.ends_with(sign.sign)) return &sign;
    return nullptr;
}

std::string writeFractionSign(Fraction fraction) {
    const std::int64_t whole = fraction.numerator() / fraction.denominator();
    const auto part =
        Fraction::make(fraction.numerator() % fraction.denominator(), fraction.denominator());
    for (const FractionSign& sign : kFractionSigns)
        if (part == sign.value())
            return (whole == 0 ? std::string{} : std::to_string(whole)) + std::string{sign.sign};
    return writeFraction(fraction);
}

}  // namespace nettare
