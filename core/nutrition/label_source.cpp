#include "core/nutrition/label_source.h"

#include <cmath>

#include "core/label/us_printed_interval.h"

namespace nettare {

LinearForm servingGrams(const LabelFacts& label, std::uint32_t food) {
    LinearForm grams{label.servingGrams.value()};
    const Interval interval = servingGramsInterval(label.servingGrams).closed();
    const double off = interval.middle() - grams.value();
    const double u = std::sqrt(interval.width() * interval.width() / 12 + off * off);
    return grams.depend(rectangle({SourceKind::LabelServing, food, 0}, u, off), 1);
}

}  // namespace nettare
