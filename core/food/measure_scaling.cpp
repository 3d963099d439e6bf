#include "core/food/measure_scaling.h"

#include <cmath>
#include <optional>

#include "core/food/volume_measure.h"

namespace nettare {

namespace {

constexpr double kHalfGram = 0.5;

/// How much of what both measure the amount of one is: millilitres, or units.
struct Sizes {
    double a, b;
};

std::optional<Sizes> comparable(const HouseholdMeasure& a, const HouseholdMeasure& b) {
    if (a.qualifier != b.qualifier) return std::nullopt;
    if (a.unit == b.unit) return Sizes{a.amount, b.amount};
    const auto first = volumeOfMeasure(a.unit);
    const auto second = first ? volumeOfMeasure(b.unit) : std::nullopt;
    if (!second) return std::nullopt;
    return Sizes{a.amount * *first, b.amount * *second};
}

/// Standard error of the grams; 0 where none is published.
double standardError(const HouseholdMeasure& measure) {
    if (!measure.standardDeviation || measure.n < 2) return 0;
    return *measure.standardDeviation / std::sqrt(static_cast<double>(measure.n));
}

}  // namespace

bool scaleAlike(const HouseholdMeasure& a, const HouseholdMeasure& b) {
    const auto sizes = comparable(a, b);
    if (!sizes) return true;
    const double apart = std::fabs(a.grams / sizes->a - b.grams / sizes->b);
    const double rounding = kHalfGram / sizes->a + kHalfGram / sizes->b;
    const double errors = std::hypot(standardError(a) / sizes->a, standardError(b) / sizes->b);
    return apart <= rounding + 2 * errors;
}

std::vector<std::pair<std::size_t, std::size_t>> measuresThatDoNotScale(const TableFood& food) {
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    for (std::size_t i = 0; i < food.measures.size(); ++i)
        for (std::size_t k = i + 1; k < food.measures.size(); ++k)
            if (!scaleAlike(food.measures[i], food.measures[k])) pairs.emplace_back(i, k);
    return pairs;
}

}  // namespace nettare
