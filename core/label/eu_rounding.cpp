#include "core/label/eu_rounding.h"

#include <array>

namespace nettare {

namespace {

using enum PrintKind;

constexpr Decimal kNothing{};
constexpr Decimal kTenGrams{10, 0};
constexpr Decimal kHalfGram{5, -1};
constexpr Decimal kTenth{1, -1};
constexpr Decimal kHundredth{1, -2};
constexpr Decimal kSaltFloor{125, -4};

/// To the whole kJ or kcal.
constexpr std::array kEuEnergy{
    PrintBand{Nearest, Decimal{1, 0}, kNothing, true, std::nullopt, false},
};

/// 0.5 or less: "0" or "<0.5"; to 0.1 below 10; to 1 from there.
constexpr std::array kEuParts{
    PrintBand{Zero, kNothing, kNothing, true, kHalfGram, true},
    PrintBand{LessThan, kHalfGram, kNothing, true, kHalfGram, true},
    PrintBand{Nearest, kTenth, kHalfGram, false, kTenGrams, false},
    PrintBand{Nearest, Decimal{1, 0}, kTenGrams, true, std::nullopt, false},
};

/// 0.1 or less: "0" or "<0.1"; to 0.1 below 10; to 1 from there.
constexpr std::array kEuFattyAcids{
    PrintBand{Zero, kNothing, kNothing, true, kTenth, true},
    PrintBand{LessThan, kTenth, kNothing, true, kTenth, true},
    PrintBand{Nearest, kTenth, kTenth, false, kTenGrams, false},
    PrintBand{Nearest, Decimal{1, 0}, kTenGrams, true, std::nullopt, false},
};

/// 0.0125 or less: "0" or "<0.01"; to 0.01 below 1; to 0.1 from there.
constexpr std::array kEuSalt{
    PrintBand{Zero, kNothing, kNothing, true, kSaltFloor, true},
    PrintBand{LessThan, kHundredth, kNothing, true, kSaltFloor, true},
    PrintBand{Nearest, kHundredth, kSaltFloor, false, Decimal{1, 0}, false},
    PrintBand{Nearest, kTenth, Decimal{1, 0}, true, std::nullopt, false},
};

/// Sodium in mg, where it is still printed: the steps of 0.01 g and 0.1 g, from memory.
constexpr std::array kEuSodium{
    PrintBand{Zero, kNothing, kNothing, true, Decimal{5, 0}, true},
    PrintBand{LessThan, Decimal{5, 0}, kNothing, true, Decimal{5, 0}, true},
    PrintBand{Nearest, kTenGrams, Decimal{5, 0}, false, Decimal{1000, 0}, false},
    PrintBand{Nearest, Decimal{100, 0}, Decimal{1000, 0}, true, std::nullopt, false},
};

}  // namespace

std::optional<PrintRule> euAmountRule(const LabelLine& line) {
    if (const auto* only = std::get_if<LabelOnly>(&line))
        return *only == LabelOnly::NACL ? PrintRule{kEuSalt} : PrintRule{kEuParts};
    switch (std::get<Component>(line)) {
        case Component::ENERC_KCAL:
        case Component::ENERC_KJ:
            return kEuEnergy;
        case Component::FAT:
        case Component::SUGAR:
        case Component::FIBTG:
        case Component::PROCNT:
            return kEuParts;
        case Component::FASAT:
        case Component::FAMS:
        case Component::FAPU:
            return kEuFattyAcids;
        case Component::NA:
            return kEuSodium;
        default:
            return std::nullopt;
    }
}

}  // namespace nettare
