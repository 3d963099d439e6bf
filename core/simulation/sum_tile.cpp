#include "core/simulation/sum_tile.h"

#include <algorithm>

namespace nettare {

SumTile::SumTile(const FigurePlan& plan, std::size_t trials)
    : plan_{plan}, trials_{trials}, numbers_(plan.sums.size() * trials) {
    reset();
}

void SumTile::reset() {
    for (std::size_t sum = 0; sum < plan_.sums.size(); ++sum)
        std::fill_n(&numbers_[sum * trials_], trials_, plan_.sums[sum]);
}

void SumTile::move(const FigurePlan::DrawnSource& source, std::span<const double> deviations) {
    for (const auto& [sum, sensitivity] : source.targets) {
        double* numbers = &numbers_[sum * trials_];
        for (std::size_t t = 0; t < trials_; ++t) numbers[t] += sensitivity * deviations[t];
    }
}

void SumTile::addProduct(const FigurePlan::Product& product, std::span<double> values) const {
    const double* grams = row(product.grams);
    const double* perGram = row(product.perGram);
    if (!product.serving) {
        for (std::size_t t = 0; t < trials_; ++t) values[t] += grams[t] * perGram[t];
        return;
    }
    const double* serving = row(*product.serving);
    for (std::size_t t = 0; t < trials_; ++t) values[t] += grams[t] / serving[t] * perGram[t];
}

void SumTile::figures(std::span<double> values) const {
    std::ranges::fill(values, 0.0);
    for (const FigurePlan::Product& product : plan_.products) addProduct(product, values);
    if (plan_.plain)
        for (std::size_t t = 0; t < trials_; ++t) values[t] += row(*plan_.plain)[t];
    if (plan_.neverNegative)
        for (double& value : values) value = std::max(0.0, value);
    if (plan_.divisor)
        for (std::size_t t = 0; t < trials_; ++t)
            values[t] *= plan_.factor / row(*plan_.divisor)[t];
    if (plan_.share)
        for (std::size_t t = 0; t < trials_; ++t) values[t] *= row(*plan_.share)[t];
    if (plan_.shift != 0)
        for (double& value : values) value += plan_.shift;
}

double valueWithoutDeviation(const FigurePlan& plan) {
    const SumTile tile{plan, 1};
    double value = 0;
    tile.figures({&value, 1});
    return value;
}

}  // namespace nettare
