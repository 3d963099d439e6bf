#include "core/nutrition/label_source.h"

#include <cmath>

#include "core/label/label_interval.h"

namespace nettare {

namespace {

/// The rounding of the printed size, in its own unit.
Source servingSource(const LabelFacts& label, std::uint32_t food) {
    const Interval interval = servingInterval(label.rules, *label.servingSize).closed();
    const double off = interval.middle() - label.servingSize->value();
    const double u = std::sqrt(interval.width() * interval.width() / 12 + off * off);
    return rectangle({SourceKind::LabelServing, food, 0}, u, off);
}

}  // namespace

LinearForm labelMillilitres(const LabelFacts& label, std::uint32_t food, double millilitres) {
    LinearForm grams{millilitres * label.density->gramsPerMl.value()};
    const double u = rectangular(2 * label.density->within.value());
    return grams.depend(rectangle({SourceKind::LabelDensity, food, 0}, u), millilitres);
}

LinearForm servingGrams(const LabelFacts& label, std::uint32_t food) {
    const double size = label.servingSize->value();
    LinearForm grams =
        label.servingInMillilitres ? labelMillilitres(label, food, size) : LinearForm{size};
    const double gramsEach = label.servingInMillilitres ? label.density->gramsPerMl.value() : 1;
    return grams.depend(servingSource(label, food), gramsEach);
}

LinearForm labelBasis(const LabelFacts& label, std::uint32_t food) {
    switch (label.per) {
        case LabelPer::Serving:
            break;
        case LabelPer::HundredGrams:
            return LinearForm{100};
        case LabelPer::HundredMillilitres:
            return labelMillilitres(label, food, 100);
    }
    return servingGrams(label, food);
}

}  // namespace nettare
