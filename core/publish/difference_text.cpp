#include "core/publish/difference_text.h"

#include "core/publish/number_text.h"
#include "core/quantity/decimal.h"

namespace nettare {

namespace {

constexpr int kMoreDecimals = 3;

std::string signedText(int decimals, double difference) {
    const std::string text = numberAt(decimals, difference);
    return text != numberAt(decimals, 0) && difference > 0 ? "+" + text : text;
}

}  // namespace

DifferenceText differenceText(int decimals, double before, double after) {
    const auto rounded = [](int at, double value) {
        return roundedToStep(Decimal::fromDouble(value), {1, -at});
    };
    for (int at = decimals; at <= decimals + kMoreDecimals; ++at) {
        const Decimal ends = rounded(at, after).minus(rounded(at, before));
        if (ends == rounded(at, after - before))
            return {numberAt(at, before), numberAt(at, after), signedText(at, after - before)};
    }
    const Decimal ends = rounded(decimals, after).minus(rounded(decimals, before));
    return {numberAt(decimals, before), numberAt(decimals, after),
            signedText(decimals, ends.value())};
}

}  // namespace nettare
