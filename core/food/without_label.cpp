#include "core/food/without_label.h"

#include <cmath>

#include "core/label/label_interval.h"
#include "core/label/label_values.h"

namespace nettare {

namespace {

double squared(double number) {
    return number * number;
}

/// Relative variance of a value that lies anywhere between two ends.
double rectangleVariance(double low, double high, double value) {
    return (squared(high - low) / 12 + squared((low + high) / 2 - value)) / squared(value);
}

/// What the grams of the label add to every value: serving and density.
double basisVariance(const LabelFacts& label) {
    double variance = 0;
    if (label.per == LabelPer::Serving && label.servingSize) {
        const Interval size = servingInterval(label.rules, *label.servingSize).closed();
        variance += rectangleVariance(size.low, size.high, label.servingSize->value());
    }
    const bool speaksOfMl = label.per == LabelPer::HundredMillilitres ||
                            (label.per == LabelPer::Serving && label.servingInMillilitres);
    if (speaksOfMl && label.density)
        variance += squared(label.density->within.value() / label.density->gramsPerMl.value()) / 3;
    return variance;
}

}  // namespace

TableFood withoutLabel(const TableFood& food) {
    TableFood bare = food;
    if (!food.label) return bare;
    bare.label.reset();
    const auto values = labelValues(*food.label);
    if (!values) return bare;
    const double declaration = food.label->declarationSpread.value_or(Decimal{}).value();
    const double common = basisVariance(*food.label) + squared(declaration) / 3;
    for (const LabelValue& value : *values) {
        if (value.value <= 0) continue;
        const double own = rectangleVariance(value.low, value.high, value.value);
        bare.profile.spread[indexOf(value.component)].assumedRelative = std::sqrt(own + common);
    }
    return bare;
}

}  // namespace nettare
