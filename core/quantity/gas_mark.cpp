#include "core/quantity/gas_mark.h"

#include <array>

#include "core/quantity/measure_cursor.h"

namespace nettare {

namespace {

constexpr std::array kGasMarks{
    GasMark{1, 4, 225, 110, 110}, GasMark{1, 2, 250, 120, 130}, GasMark{1, 1, 275, 140, 140},
    GasMark{2, 1, 300, 150, 150}, GasMark{3, 1, 325, 160, 170}, GasMark{4, 1, 350, 180, 180},
    GasMark{5, 1, 375, 190, 190}, GasMark{6, 1, 400, 200, 200}, GasMark{7, 1, 425, 220, 220},
    GasMark{8, 1, 450, 230, 230}, GasMark{9, 1, 475, 240, 240},
};

}  // namespace

Fraction GasMark::celsius() const {
    return *celsiusOf(Fraction{fahrenheit});
}

std::span<const GasMark> allGasMarks() {
    return kGasMarks;
}

const GasMark* findGasMark(Fraction mark) {
    for (const GasMark& known : kGasMarks)
        if (known.mark() == mark) return &known;
    return nullptr;
}

std::optional<GasMarkText> readGasMark(std::string_view text) {
    MeasureCursor cursor{text};
    const bool about = cursor.takeAbout();
    if (cursor.takeOneOf({"gas mark", "gas-mark", "gasmark", "gas no.", "gas", "mark"}).empty())
        return std::nullopt;
    const auto range = cursor.takeRange();
    if (!range || !cursor.atEnd()) return std::nullopt;
    const GasMark* low = findGasMark(range->low);
    const GasMark* high = findGasMark(range->high);
    if (low == nullptr || high == nullptr) return std::nullopt;
    return GasMarkText{low, high, about};
}

}  // namespace nettare
