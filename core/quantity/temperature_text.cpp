#include "core/quantity/temperature_text.h"

#include "core/quantity/measure_cursor.h"

namespace nettare {

namespace {

constexpr double kFanLeast_K = 20;
constexpr double kFanMost_K = 25;
constexpr double kAbout_K = 10;

/// What stands behind a number: a mark of degrees, a scale, or both.
struct DegreeUnit {
    bool found = false;
    std::optional<TemperatureScale> scale;
};

DegreeUnit takeDegreeUnit(MeasureCursor& cursor) {
    using enum TemperatureScale;
    if (cursor.take("℃")) return {true, Celsius};
    if (cursor.take("℉")) return {true, Fahrenheit};
    const std::size_t before = cursor.place();
    const bool hyphen = cursor.take("-");
    // The degree sign, and what is often typed for it: an ordinal mark, a ring.
    const bool marked =
        !cursor.takeOneOf({"°", "º", "˚", "degrees", "degree", "degs", "deg.", "deg"}).empty();
    if (!cursor.takeOneOf({"celsius", "centigrade", "c"}).empty()) return {true, Celsius};
    if (!cursor.takeOneOf({"fahrenheit", "f"}).empty()) return {true, Fahrenheit};
    if (hyphen && !marked) cursor.backTo(before);
    return {marked, std::nullopt};
}

bool takeFan(MeasureCursor& cursor) {
    return !cursor
                .takeOneOf({"(fan oven)", "(fan-forced)", "(fan)", "(convection)", "fan oven",
                            "fan-forced", "fan", "convection"})
                .empty();
}

std::optional<TemperatureMeaning> meaningOf(TemperatureScale scale, Fraction low, Fraction high) {
    const bool typedCelsius = scale == TemperatureScale::Celsius;
    const auto lowOther = typedCelsius ? fahrenheitOf(low) : celsiusOf(low);
    const auto highOther = typedCelsius ? fahrenheitOf(high) : celsiusOf(high);
    if (!lowOther || !highOther) return std::nullopt;
    const TemperatureMeaning meaning =
        typedCelsius ? TemperatureMeaning{scale, low, high, *lowOther, *highOther}
                     : TemperatureMeaning{scale, *lowOther, *highOther, low, high};
    const bool possible =
        low <= high && high <= Fraction{2000} && meaning.lowCelsius >= *Fraction::make(-27315, 100);
    return possible ? std::optional{meaning} : std::nullopt;
}

/// "180", "180-190", "180 °C to 190 °C", with what unit was said; low and high as typed.
struct TypedDegrees {
    Fraction low, high;
    DegreeUnit unit;
};

std::optional<TypedDegrees> takeDegrees(MeasureCursor& cursor) {
    const auto low = cursor.takeSignedNumber();
    if (!low) return std::nullopt;
    const DegreeUnit first = takeDegreeUnit(cursor);
    const std::size_t before = cursor.place();
    if (cursor.takeRangeMark())
        if (const auto high = cursor.takeSignedNumber()) {
            const DegreeUnit second = takeDegreeUnit(cursor);
            const bool agree = !first.scale || first.scale == second.scale;
            return agree ? std::optional{TypedDegrees{*low, *high, second}} : std::nullopt;
        }
    cursor.backTo(before);
    return TypedDegrees{*low, *low, first};
}

}  // namespace

std::optional<Fraction> celsiusOf(Fraction fahrenheit) {
    const auto above = fahrenheit.plus(Fraction{-32});
    return above ? above->times(*Fraction::make(5, 9)) : std::nullopt;
}

std::optional<Fraction> fahrenheitOf(Fraction celsius) {
    const auto degrees = celsius.times(*Fraction::make(9, 5));
    return degrees ? degrees->plus(Fraction{32}) : std::nullopt;
}

TemperatureRange TemperatureText::range(const TemperatureMeaning& meaning) const {
    const double margin_K = about ? kAbout_K : 0;
    return {Temperature::fromCelsius(meaning.lowCelsius.value() - margin_K),
            Temperature::fromCelsius(meaning.highCelsius.value() + margin_K)};
}

std::optional<TemperatureText> readTemperature(std::string_view text) {
    MeasureCursor cursor{text};
    TemperatureText read;
    read.about = cursor.takeAbout();
    read.fan = takeFan(cursor);
    const auto typed = takeDegrees(cursor);
    if (!typed || !typed->unit.found) return std::nullopt;
    read.fan = takeFan(cursor) || read.fan;
    if (!cursor.atEnd()) return std::nullopt;
    for (const TemperatureScale scale : {TemperatureScale::Celsius, TemperatureScale::Fahrenheit})
        if (!typed->unit.scale || typed->unit.scale == scale)
            if (const auto meaning = meaningOf(scale, typed->low, typed->high))
                read.meanings.push_back(*meaning);
    return read.meanings.empty() ? std::nullopt : std::optional{std::move(read)};
}

TemperatureRange fanSettingFor(Temperature conventional) {
    return {conventional + TemperatureDifference::fromKelvin(-kFanMost_K),
            conventional + TemperatureDifference::fromKelvin(-kFanLeast_K)};
}

TemperatureRange conventionalFor(Temperature fanSetting) {
    return {fanSetting + TemperatureDifference::fromKelvin(kFanLeast_K),
            fanSetting + TemperatureDifference::fromKelvin(kFanMost_K)};
}

std::int64_t safeWholeDegrees(Fraction degrees, SafetyLimit limit) {
    const std::int64_t cut = degrees.numerator() / degrees.denominator();
    const std::int64_t rest = degrees.numerator() % degrees.denominator();
    if (limit == SafetyLimit::AtLeast) return rest > 0 ? cut + 1 : cut;
    return rest < 0 ? cut - 1 : cut;
}

}  // namespace nettare
