#include "core/label/us_household.h"

#include "core/quantity/amount.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <span>
#include <vector>

namespace nettare {

namespace {

/// The smallest number that halves, thirds, quarters and eighths all divide.
constexpr std::int64_t kWhole = 24;

/// Printable amounts in 24ths of the measure: `once` from 0 on, then `perWhole` over and over.
struct HouseholdSteps {
    std::span<const int> once;
    std::span<const int> perWhole;
};

constexpr std::array kFromZero{0};
constexpr std::array kSpoonThirds{0, 24, 32, 36, 40, 48};
constexpr std::array kSpoonParts{0, 3, 6, 12, 18, 24};
constexpr std::array kWholes{24};
constexpr std::array kHalves{12, 24};
constexpr std::array kThirdsAndQuarters{6, 8, 12, 16, 18, 24};

/// The steps that usHouseholdText() names.
HouseholdSteps stepsOf(UsHouseholdMeasure measure) {
    switch (measure) {
        case UsHouseholdMeasure::Cup:
            return {kFromZero, kThirdsAndQuarters};
        case UsHouseholdMeasure::Tablespoon:
            return {kSpoonThirds, kWholes};
        case UsHouseholdMeasure::Teaspoon:
            return {kSpoonParts, kWholes};
        case UsHouseholdMeasure::Ounce:
            return {kFromZero, kHalves};
        case UsHouseholdMeasure::FluidOunce:
        case UsHouseholdMeasure::Piece:
            break;
    }
    return {kFromZero, kWholes};
}

/// The printable amounts around `amount`, ascending, in 24ths. Its own whole, the one
/// below and the one above are enough, since each has a printable part.
std::vector<std::int64_t> neighbours(const HouseholdSteps& steps, double amount) {
    std::vector<std::int64_t> found(steps.once.begin(), steps.once.end());
    const auto whole = static_cast<std::int64_t>(amount);
    const std::int64_t end = found.back();
    for (std::int64_t start = whole - 1; start <= whole + 1; ++start)
        for (const int part : steps.perWhole)
            if (start * kWhole + part > end) found.push_back(start * kWhole + part);
    return found;
}

/// Nearest of ascending amounts, halfway up; `amount48` is the exact amount in 48ths, where the
/// middle of two neighbours is a whole number.
std::int64_t nearest(const std::vector<std::int64_t>& ascending, Fraction amount48) {
    std::int64_t chosen = ascending.front();
    for (const std::int64_t next : ascending)
        if (amount48 >= Fraction{chosen + next}) chosen = next;
    return chosen;
}

/// Keeps quotients within the integers that they are counted in.
bool countable(double value, double most) {
    return std::isfinite(value) && value > 0 && value <= most;
}

}  // namespace

Result<std::string> usHouseholdText(UsHouseholdMeasure measure, double amount) {
    const auto refused =
        fail(Error{ErrorCode::OutOfRange}.with("found", fmt::format("{}", amount)));
    if (!countable(amount, 1e9)) return refused;
    const auto exact = Decimal::fromDouble(amount).fraction();
    const auto exact48 = exact ? exact->times(Fraction{2 * kWhole}) : std::nullopt;
    if (!exact48) return refused;
    const std::int64_t chosen = nearest(neighbours(stepsOf(measure), amount), *exact48);
    const auto printed = Fraction::make(chosen, kWhole);
    if (!printed || chosen == 0) return refused;
    return writeFraction(*printed);
}

std::optional<UsLabelMeasure> usLabelMeasure(UsHouseholdMeasure measure) {
    switch (measure) {
        case UsHouseholdMeasure::Cup:
            return UsLabelMeasure{{240, 0}, "mL"};
        case UsHouseholdMeasure::Tablespoon:
            return UsLabelMeasure{{15, 0}, "mL"};
        case UsHouseholdMeasure::Teaspoon:
            return UsLabelMeasure{{5, 0}, "mL"};
        case UsHouseholdMeasure::FluidOunce:
            return UsLabelMeasure{{30, 0}, "mL"};
        case UsHouseholdMeasure::Ounce:
            return UsLabelMeasure{{28, 0}, "g"};
        case UsHouseholdMeasure::Piece:
            break;
    }
    return std::nullopt;
}

Result<UsPiecesPerServing> usPiecesPerServing(double gramsPerPiece, double referenceGrams) {
    if (!(gramsPerPiece > 0 && referenceGrams > 0)) return fail(ErrorCode::NotPositive);
    if (!countable(referenceGrams / gramsPerPiece, 1e6) || !countable(gramsPerPiece, 1e9))
        return fail(ErrorCode::OutOfRange);
    const Decimal piece = Decimal::fromDouble(gramsPerPiece);
    const Decimal reference = Decimal::fromDouble(referenceGrams);
    if (piece.times(2) <= reference) {
        const Decimal share = Decimal::fromDouble(referenceGrams / gramsPerPiece);
        const auto pieces = static_cast<int>(roundedToStep(share, Decimal{1, 0}).coefficient());
        return UsPiecesPerServing{pieces, pieces, false};
    }
    // 67 % as whole numbers, so that a piece of exactly 67 % is seen as such.
    if (piece.times(100) < reference.times(67)) return UsPiecesPerServing{1, 2, false};
    return UsPiecesPerServing{1, 1, piece >= reference.times(2)};
}

}  // namespace nettare
