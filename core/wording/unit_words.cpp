#include "core/wording/unit_words.h"

#include "core/wording/unit_names.h"
#include "core/wording/word_list.h"

namespace nettare {

namespace {

constexpr WordList kLengthWords{
    "\"",     "centimeter", "centimeters", "centimetre", "centimetres", "cm", "cms",    "inch",
    "inches", "millimeter", "millimeters", "millimetre", "millimetres", "mm", "\u2033",
};

/// The point of "tbsp." belongs to it.
std::size_t pastPoint(const LineScan& scan, std::size_t i) {
    return scan.isGlued(i) && scan.is(i, ".") ? i + 1 : i;
}

/// "fl oz", "fl. ozs.", "fluid ounces"; the token behind it, or `i`.
std::size_t fluidOunceEnd(const LineScan& scan, std::size_t i) {
    if (!scan.is(i, "fl") && !scan.is(i, "fluid")) return i;
    const std::size_t next = pastPoint(scan, i + 1);
    const bool ounce = unitNamed(scan.word(next)) == "oz";
    return ounce ? pastPoint(scan, next + 1) : i;
}

std::optional<UnitRead> ofCountry(const LineScan& scan, std::size_t i) {
    const std::string_view word = scan.word(i);
    const bool us = word == "us" || word == "u.s" || word == "american";
    const bool imperial =
        word == "imp" || word == "imperial" || word == "uk" || word == "u.k" || word == "british";
    if (!us && !imperial) return std::nullopt;
    const std::size_t next = pastPoint(scan, i + 1);
    if (const std::size_t end = fluidOunceEnd(scan, next); end != next)
        return UnitRead{end, us ? "us fl oz" : "imp fl oz", {}};
    const std::string_view unit = unitNamed(scan.word(next));
    if (unit.empty()) return std::nullopt;
    const std::size_t end = pastPoint(scan, next + 1);
    if (unit == "pint") return UnitRead{end, us ? "us pint" : "imp pint", {}};
    if (unit == "gal") return UnitRead{end, us ? "gal" : "imp gal", {}};
    if (us && (unit == "cup" || unit == "quart")) return UnitRead{end, unit, {}};
    return std::nullopt;
}

}  // namespace

std::optional<UnitRead> readUnit(const LineScan& scan, std::size_t i) {
    if (!scan.isKind(i, TokenKind::Word)) return std::nullopt;
    const std::size_t end = pastPoint(scan, i + 1);
    if (scan.written(i) == "T") return UnitRead{end, "tbsp", {}};
    if (scan.written(i) == "t") return UnitRead{end, "tsp", {}};
    if (const std::size_t fluid = fluidOunceEnd(scan, i); fluid != i)
        return UnitRead{fluid, "fl oz", {}};
    if (const auto unit = ofCountry(scan, i)) return unit;
    const std::string_view unit = unitNamed(scan.word(i));
    if (unit.empty()) return std::nullopt;
    if (unit == "oz") return UnitRead{end, "oz", "fl oz"};
    return UnitRead{end, unit, {}};
}

std::size_t lengthUnitEnd(const LineScan& scan, std::size_t i) {
    if (kLengthWords.has(scan.word(i))) return scan.is(i + 1, ".") ? pastPoint(scan, i + 1) : i + 1;
    // "1-inch-thick"
    const std::size_t hyphen = scan.word(i).find('-');
    if (hyphen != std::string_view::npos && kLengthWords.has(scan.word(i).substr(0, hyphen)))
        return i + 1;
    return scan.is(i, "in") && scan.isGlued(i + 1) && scan.is(i + 1, ".") ? i + 2 : i;
}

}  // namespace nettare
