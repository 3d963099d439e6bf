#include "core/quantity/duration.h"

#include "core/quantity/measure_cursor.h"

namespace nettare {

namespace {

constexpr double kMinute_s = 60;
constexpr double kHour_s = 3600;
constexpr double kDay_s = 86400;

/// Seconds of the unit that stands here (SI Brochure, 9th edition, table 8).
std::optional<double> takeTimeUnit(MeasureCursor& cursor) {
    const std::size_t before = cursor.place();
    [[maybe_unused]] const bool hyphen = cursor.take("-");
    if (!cursor.takeOneOf({"seconds", "second", "secs.", "secs", "sec.", "sec", "s"}).empty())
        return 1;
    if (!cursor.takeOneOf({"minutes", "minute", "mins.", "mins", "min.", "min"}).empty())
        return kMinute_s;
    if (!cursor.takeOneOf({"hours", "hour", "hrs.", "hrs", "hr.", "hr", "h"}).empty())
        return kHour_s;
    if (!cursor.takeOneOf({"days", "day", "d"}).empty()) return kDay_s;
    cursor.backTo(before);
    return std::nullopt;
}

/// "an hour", "half an hour", "three quarters of an hour".
std::optional<double> takeWordedTime(MeasureCursor& cursor) {
    double share = 1;
    if (cursor.take("half"))
        share = 0.5;
    else if (cursor.take("three quarters of") || cursor.take("three-quarters of"))
        share = 0.75;
    else if (cursor.take("a quarter of") || cursor.take("quarter of"))
        share = 0.25;
    if (cursor.takeOneOf({"an", "a"}).empty()) return std::nullopt;
    const auto unit = takeTimeUnit(cursor);
    return unit ? std::optional{share * *unit} : std::nullopt;
}

/// One end of a range. A bare number's unit stands at the other end: the 25 of "25-30 minutes".
struct TimeEnd {
    double number = 0;  ///< of a bare number
    double total_s = 0;
    double firstUnit_s = 0;  ///< 0 for a bare number
};

/// "1 h 30 min" from its second part on: each smaller than the one before. "1h30" are 30 minutes.
double takeSmallerParts(MeasureCursor& cursor, double unit_s) {
    double sum_s = 0;
    while (true) {
        const std::size_t before = cursor.place();
        [[maybe_unused]] const bool joined = cursor.take("and") || cursor.take(",");
        const auto number = cursor.takeNumber();
        auto unit = number ? takeTimeUnit(cursor) : std::nullopt;
        if (number && !unit && unit_s == kHour_s && cursor.atEnd()) unit = kMinute_s;
        if (!unit || *unit >= unit_s) {
            cursor.backTo(before);
            return sum_s;
        }
        sum_s += number->value() * *unit;
        unit_s = *unit;
    }
}

std::optional<TimeEnd> takeTime(MeasureCursor& cursor) {
    const std::size_t before = cursor.place();
    if (const auto seconds = takeWordedTime(cursor)) return TimeEnd{0, *seconds, kHour_s};
    cursor.backTo(before);
    const auto number = cursor.takeNumber();
    if (!number) return std::nullopt;
    const auto unit = takeTimeUnit(cursor);
    if (!unit) return TimeEnd{number->value(), 0, 0};
    return TimeEnd{0, number->value() * *unit + takeSmallerParts(cursor, *unit), *unit};
}

}  // namespace

Interval DurationText::seconds() const {
    const double margin = about ? kAboutRelative : 0;
    return {low.seconds() * (1 - margin), high.seconds() * (1 + margin)};
}

std::optional<DurationText> readDuration(std::string_view text) {
    MeasureCursor cursor{text};
    const bool about = cursor.takeAbout();
    auto low = takeTime(cursor);
    const auto high = low && cursor.takeRangeMark() ? takeTime(cursor) : low;
    if (!high || high->firstUnit_s == 0 || !cursor.atEnd()) return std::nullopt;
    if (low->firstUnit_s == 0) low->total_s = low->number * high->firstUnit_s;
    if (low->total_s <= 0 || high->total_s < low->total_s) return std::nullopt;
    return DurationText{Duration::fromSeconds(low->total_s), Duration::fromSeconds(high->total_s),
                        about};
}

}  // namespace nettare
