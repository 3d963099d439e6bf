#include "core/wording/line_reading.h"

#include <algorithm>
#include <tuple>

namespace nettare {

namespace {

bool sameValue(const Amount& a, const Amount& b) {
    return a.low() == b.low() && a.high() == b.high();
}

bool sameValue(const AskedAmount& a, const AskedAmount& b) {
    return sameValue(a.decimal, b.decimal) && sameValue(a.grouped, b.grouped);
}

template <typename Value>
bool sameValue(const std::optional<Value>& a, const std::optional<Value>& b) {
    return a.has_value() == b.has_value() && (!a || sameValue(*a, *b));
}

bool sameValue(const LineMeasure& a, const LineMeasure& b) {
    return sameValue(a.amount, b.amount) && sameValue(a.asked, b.asked) && a.units == b.units &&
           a.counted == b.counted && a.about == b.about;
}

bool sameTexts(const LineReading& a, const LineReading& b) {
    const auto texts = [](const LineReading& line) {
        return std::tie(line.piece, line.size, line.fill, line.food, line.preparation,
                        line.alternative, line.rest);
    };
    return texts(a) == texts(b);
}

bool sameFlags(const LineReading& a, const LineReading& b) {
    const auto flags = [](const LineReading& line) {
        return std::tie(line.optional, line.toTaste, line.plusMore, line.about, line.assumed);
    };
    return flags(a) == flags(b);
}

bool sameMeasures(const std::vector<LineMeasure>& a, const std::vector<LineMeasure>& b) {
    return std::ranges::equal(
        a, b, [](const LineMeasure& x, const LineMeasure& y) { return sameValue(x, y); });
}

}  // namespace

bool sameFields(const LineReading& a, const LineReading& b) {
    return sameValue(a.amount, b.amount) && sameValue(a.amountAsked, b.amountAsked) &&
           a.units == b.units && sameMeasures(a.each, b.each) && sameMeasures(a.equals, b.equals) &&
           sameTexts(a, b) && sameFlags(a, b);
}

}  // namespace nettare
