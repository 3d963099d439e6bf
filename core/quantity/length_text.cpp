#include "core/quantity/length_text.h"

#include "core/quantity/measure_cursor.h"

namespace nettare {

namespace {

/// Millimetres of the unit that stands here.
std::optional<double> takeLengthUnit(MeasureCursor& cursor) {
    const std::size_t before = cursor.place();
    // The hyphen of "2-inch"; readers of a range have passed it by.
    [[maybe_unused]] const bool hyphen = cursor.take("-");
    if (!cursor.takeOneOf({"mm", "millimetres", "millimeters", "millimetre", "millimeter"}).empty())
        return 1;
    if (!cursor.takeOneOf({"cm", "centimetres", "centimeters", "centimetre", "centimeter"}).empty())
        return 10;
    if (!cursor.takeOneOf({"inches", "inch", "in.", "in", "\"", "″", "”", "''"}).empty())
        return 25.4;
    cursor.backTo(before);
    return std::nullopt;
}

std::string takeDimension(MeasureCursor& cursor) {
    return std::string{
        cursor.takeOneOf({"across", "in diameter", "diameter", "in length", "long", "in thickness",
                          "thick", "in width", "wide", "in height", "high", "tall", "deep"})};
}

/// "7 cm - 9 cm" has a unit at both ends.
struct LengthEnds {
    double low_mm, high_mm;
};

std::optional<LengthEnds> takeEnds(MeasureCursor& cursor) {
    const auto range = cursor.takeRange();
    const auto unit = range ? takeLengthUnit(cursor) : std::nullopt;
    if (!unit) return std::nullopt;
    const LengthEnds first{range->low.value() * *unit, range->high.value() * *unit};
    const std::size_t before = cursor.place();
    if (range->low == range->high && cursor.takeRangeMark()) {
        const auto high = cursor.takeNumber();
        const auto highUnit = high ? takeLengthUnit(cursor) : std::nullopt;
        if (highUnit) return LengthEnds{first.low_mm, high->value() * *highUnit};
    }
    cursor.backTo(before);
    return first;
}

}  // namespace

Interval LengthText::millimetres() const {
    const double margin = about ? kAboutRelative : 0;
    return {low.millimetres() * (1 - margin), high.millimetres() * (1 + margin)};
}

std::optional<LengthText> readLength(std::string_view text) {
    MeasureCursor cursor{text};
    const bool about = cursor.takeAbout();
    const auto ends = takeEnds(cursor);
    if (!ends || ends->low_mm <= 0 || ends->high_mm < ends->low_mm) return std::nullopt;
    std::string dimension = takeDimension(cursor);
    if (!cursor.atEnd()) return std::nullopt;
    return LengthText{Length::fromMillimetres(ends->low_mm), Length::fromMillimetres(ends->high_mm),
                      about, std::move(dimension)};
}

}  // namespace nettare
