#include "core/nutrition/written_amount.h"

#include <algorithm>

namespace nettare {

namespace {

/// The step of the last digit as written: 1 for "150", 0.1 for "1,5", a quarter for "3/4".
double lastStepOf(const Amount& amount) {
    const std::string& text = amount.text();
    const auto mark =
        std::find_if(text.begin(), text.end(), [](char c) { return c == '.' || c == ','; });
    if (mark == text.end()) return 1.0 / static_cast<double>(amount.high().denominator());
    const auto end = std::find_if(mark + 1, text.end(), [](char c) { return c < '0' || c > '9'; });
    return Decimal{1, static_cast<int>(mark + 1 - end)}.value();
}

}  // namespace

// A range stands for any amount between its ends.
LinearForm amountOf(const Line& line, std::uint32_t number) {
    LinearForm amount{line.amount.middle()};
    if (line.amount.isRange())
        amount.depend(
            ownSource({SourceKind::AmountRange, 0, number},
                      rectangular(line.amount.high().value() - line.amount.low().value())),
            1);
    return amount;
}

LinearForm writtenGrams(const Line& line, std::uint32_t number) {
    LinearForm amount = amountOf(line, number);
    amount.depend(ownSource({SourceKind::Written, 0, number}, rectangular(lastStepOf(line.amount))),
                  1);
    return amount.times(massOf(1, *line.unit).grams());
}

}  // namespace nettare
