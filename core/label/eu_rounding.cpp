#include "core/label/eu_rounding.h"

#include <array>

namespace nettare {

namespace {

using enum PrintKind;

constexpr Decimal kNoAmount{};
constexpr Decimal kTenGrams{10, 0};
constexpr Decimal kHalfAGram{5, -1};
constexpr Decimal kTenthGram{1, -1};
constexpr Decimal kHundredthGram{1, -2};
constexpr Decimal kSaltFloor{125, -4};

/// To the whole kJ or kcal.
constexpr std::array kEuEnergy{
    PrintBand{Nearest, Decimal{1, 0}, kNoAmount, true, std::nullopt, false},
};

/// 0.5 or less: "0" or "<0.5"; to 0.1 below 10; to 1 from there.
constexpr std::array kEuParts{
    PrintBand{Zero, kNoAmount, kNoAmount, true, kHalfAGram, true},
    PrintBand{LessThan, kHalfAGram, kNoAmount, true, kHalfAGram, true},
    PrintBand{Nearest, kTenthGram, kHalfAGram, false, kTenGrams, false},
    PrintBand{Nearest, Decimal{1, 0}, kTenGrams, true, std::nullopt, false},
};

/// 0.1 or less: "0" or "<0.1"; to 0.1 below 10; to 1 from there.
constexpr std::array kEuFattyAcids{
    PrintBand{Zero, kNoAmount, kNoAmount, true, kTenthGram, true},
    PrintBand{LessThan, kTenthGram, kNoAmount, true, kTenthGram, true},
    PrintBand{Nearest, kTenthGram, kTenthGram, false, kTenGrams, false},
    PrintBand{Nearest, Decimal{1, 0}, kTenGrams, true, std::nullopt, false},
};

/// 0.0125 or less: "0" or "<0.01"; to 0.01 below 1; to 0.1 from there.
constexpr std::array kEuSalt{
    PrintBand{Zero, kNoAmount, kNoAmount, true, kSaltFloor, true},
    PrintBand{LessThan, kHundredthGram, kNoAmount, true, kSaltFloor, true},
    PrintBand{Nearest, kHundredthGram, kSaltFloor, false, Decimal{1, 0}, false},
    PrintBand{Nearest, kTenthGram, Decimal{1, 0}, true, std::nullopt, false},
};

/// Sodium in mg, where it is still printed: 0.005 g or less, to 0.01 g, to 0.1 g; from memory.
constexpr std::array kEuSodium{
    PrintBand{Zero, kNoAmount, kNoAmount, true, Decimal{5, 0}, true},
    PrintBand{LessThan, Decimal{5, 0}, kNoAmount, true, Decimal{5, 0}, true},
    PrintBand{Nearest, kTenGrams, Decimal{5, 0}, false, Decimal{1000, 0}, false},
    PrintBand{Nearest, Decimal{100, 0}, Decimal{1000, 0}, true, std::nullopt, false},
};

}  // namespace

std::optional<int> euSignificantFigures(const LabelLine& line) {
    const auto component = componentOf(line);
    if (!component) return std::nullopt;
    switch (*component) {
        case Component::VITA_RAE:
        case Component::FOL:
        case Component::CA:
        case Component::P:
        case Component::MG:
        case Component::K:
            return 3;
        case Component::VITD:
        case Component::TOCPHA:
        case Component::VITK1:
        case Component::VITC:
        case Component::THIA:
        case Component::RIBF:
        case Component::NIA:
        case Component::VITB6A:
        case Component::VITB12:
        case Component::PANTAC:
        case Component::FE:
        case Component::ZN:
        case Component::CU:
        case Component::MN:
        case Component::SE:
            return 2;
        default:
            return std::nullopt;
    }
}

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
