#include "core/nutrition/written_amount.h"

#include <algorithm>

namespace nettare {

double lastStepOf(const Amount& amount) {
    const std::string& text = amount.text();
    const auto mark =
        std::find_if(text.begin(), text.end(), [](char c) { return c == '.' || c == ','; });
    if (mark == text.end()) return 1.0 / static_cast<double>(amount.high().denominator());
    const auto end = std::find_if(mark + 1, text.end(), [](char c) { return c < '0' || c > '9'; });
    return Decimal{1, static_cast<int>(mark + 1 - end)}.value();
}

// A range stands for any amount between its ends.
LinearForm amountOf(const Amount& amount, std::uint32_t number) {
    LinearForm form{amount.middle()};
    if (amount.isRange())
        form.depend(rectangle({SourceKind::AmountRange, 0, number},
                              rectangular(amount.high().value() - amount.low().value())),
                    1);
    return form;
}

LinearForm amountOf(const Line& line, std::uint32_t number) {
    return amountOf(line.amount, number);
}

LinearForm writtenAmount(const Amount& amount, std::uint32_t number) {
    LinearForm form = amountOf(amount, number);
    form.depend(rectangle({SourceKind::Written, 0, number}, rectangular(lastStepOf(amount))), 1);
    return form;
}

bool isStick(const Unit& unit) {
    return unit.kind == UnitKind::Mass && !isShownByScales(unit);
}

LinearForm writtenGrams(const Line& line, std::uint32_t number) {
    return writtenAmount(line.amount, number).times(massOf(1, *line.unit).grams());
}

}  // namespace nettare
