#include "core/nutrition/test_cooks.h"

#include <algorithm>
#include <cmath>

#include "core/weighing/series.h"

namespace nettare {

LinearForm weightOverCooks(const LinearForm& own, const std::vector<LinearForm>& others,
                           SourceKey key, Meaning meaning) {
    if (meaning != Meaning::RecipeMean || others.empty()) return own;
    LinearForm sum = own;
    std::vector<double> values{own.value()};
    double rounding = own.uncertainty();
    for (const LinearForm& other : others) {
        sum.add(other);
        values.push_back(other.value());
        rounding = std::max(rounding, other.uncertainty());
    }
    const auto cooks = static_cast<double>(values.size());
    // About the mean of the sum, so that one order of cooks gives the digits of another.
    std::ranges::sort(values);
    const MeanAndDeviation statistics = meanAndDeviation(values);
    LinearForm mean{statistics.mean};
    for (const LinearForm::Term& term : sum.terms())
        if (term.source.key.kind != SourceKind::Rounding)
            mean.depend(term.source, term.sensitivity / cooks);
    const double s = std::max(*statistics.deviation, rounding);
    return mean.depend(ownSource(key, s / std::sqrt(cooks), cooks - 1), 1);
}

}  // namespace nettare
