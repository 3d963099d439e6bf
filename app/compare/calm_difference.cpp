#include "app/compare/calm_difference.h"

#include "core/quantity/decimal.h"

namespace nettare {

int decimalsOf(const std::string& number) {
    const std::size_t point = number.find('.');
    return point == std::string::npos ? 0 : static_cast<int>(number.size() - point - 1);
}

DifferenceText calmDifference(int decimals, double before, double after) {
    DifferenceText text = differenceText(decimals, before, after);
    if (decimalsOf(text.before) <= decimals + 1) return text;
    const auto written = [decimals](double value) {
        return roundedToStep(Decimal::fromDouble(value), {1, -decimals}).value();
    };
    return differenceText(decimals, written(before), written(after));
}

}  // namespace nettare
