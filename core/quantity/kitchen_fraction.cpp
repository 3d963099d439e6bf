#include "core/quantity/kitchen_fraction.h"

#include <array>
#include <cmath>
#include <span>

#include "core/quantity/amount.h"
#include "core/quantity/decimal.h"
#include "core/quantity/fraction_sign.h"

namespace nettare {

namespace {

/// The smallest number that halves, thirds, quarters and eighths all divide.
constexpr std::int64_t kParts = 24;
constexpr std::int64_t kMost = 1'000'000'000;

/// From `from` wholes on, each whole is parted so, in 24ths; the last part is the whole itself.
struct Rung {
    std::int64_t from;
    std::span<const int> parts;
};

constexpr std::array kEighthsAndThirds{3, 6, 8, 9, 12, 15, 16, 18, 21, 24};
constexpr std::array kQuartersAndThirds{6, 8, 12, 16, 18, 24};
constexpr std::array kEighthAndQuarters{3, 6, 12, 18, 24};
constexpr std::array kQuarters{6, 12, 18, 24};
constexpr std::array kHalfParts{12, 24};
constexpr std::array kWholeParts{24};

constexpr std::array kAnyLadder{Rung{0, kEighthsAndThirds}, Rung{1, kQuartersAndThirds},
                                Rung{4, kHalfParts}, Rung{10, kWholeParts}};
constexpr std::array kCupLadder{Rung{0, kQuartersAndThirds}, Rung{4, kHalfParts}};
constexpr std::array kTablespoonLadder{Rung{0, kHalfParts}, Rung{10, kWholeParts}};
constexpr std::array kTeaspoonLadder{Rung{0, kEighthAndQuarters}, Rung{1, kQuarters},
                                     Rung{2, kHalfParts}, Rung{10, kWholeParts}};

std::span<const Rung> ladderOf(KitchenTool tool) {
    switch (tool) {
        case KitchenTool::Any:
            return kAnyLadder;
        case KitchenTool::Cup:
            return kCupLadder;
        case KitchenTool::Tablespoon:
            return kTablespoonLadder;
        case KitchenTool::Teaspoon:
            return kTeaspoonLadder;
    }
    return kAnyLadder;
}

std::span<const int> partsAt(std::int64_t whole, KitchenTool tool) {
    std::span<const int> parts = kWholeParts;
    for (const Rung& rung : ladderOf(tool))
        if (whole >= rung.from) parts = rung.parts;
    return parts;
}

/// The two amounts about a value, in 24ths; `below` may be zero.
struct Neighbours {
    std::int64_t below, above;
};

Neighbours neighboursOf(Fraction value, KitchenTool tool) {
    const std::int64_t whole = value.numerator() / value.denominator();
    std::int64_t below = whole * kParts;
    for (const int part : partsAt(whole, tool)) {
        const std::int64_t next = whole * kParts + part;
        if (*Fraction::make(next, kParts) > value) return {below, next};
        below = next;
    }
    return {below, below + kParts};
}

/// 12 digits with a denominator of at most 10^12: products with 48 fit.
std::optional<Fraction> exactOf(double value) {
    if (!std::isfinite(value) || value <= 0 || value > static_cast<double>(kMost))
        return std::nullopt;
    const auto exact = Decimal::fromDouble(value).fraction();
    return exact && *exact > Fraction{0} ? exact : std::nullopt;
}

}  // namespace

std::string KitchenFraction::text() const {
    return writeFraction(amount);
}

std::string KitchenFraction::signText() const {
    return writeFractionSign(amount);
}

std::optional<KitchenFraction> kitchenFraction(Fraction value, KitchenTool tool) {
    if (value <= Fraction{0} || value > Fraction{kMost}) return std::nullopt;
    const auto [below, above] = neighboursOf(value, tool);
    // Twice a 24th is a 48th, where the middle of two neighbours is a whole number.
    const bool up = value >= *Fraction::make(below + above, 2 * kParts);
    const Fraction amount = *Fraction::make(up || below == 0 ? above : below, kParts);
    const double error = amount == value ? 0 : amount.value() / value.value() - 1;
    return KitchenFraction{amount, error};
}

std::optional<KitchenFraction> kitchenFraction(double value, KitchenTool tool) {
    const auto exact = exactOf(value);
    auto nearest = exact ? kitchenFraction(*exact, tool) : std::nullopt;
    if (!nearest) return std::nullopt;
    nearest->relativeError = nearest->amount.value() / value - 1;
    if (std::fabs(nearest->relativeError) < 1e-12) nearest->relativeError = 0;
    return nearest;
}

std::optional<Fraction> kitchenFractionBelow(double value, KitchenTool tool) {
    const auto exact = exactOf(value);
    if (!exact) return std::nullopt;
    const std::int64_t below = neighboursOf(*exact, tool).below;
    return below > 0 ? Fraction::make(below, kParts) : std::nullopt;
}

}  // namespace nettare
