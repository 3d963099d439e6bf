#include "core/wording/unit_words.h"

#include "core/wording/word_list.h"

namespace nettare {

namespace {

struct UnitWord {
    std::string_view word, symbol;
};

constexpr WordTable kUnitWords{
    UnitWord{"c", "cup"},
    UnitWord{"centiliter", "cl"},
    UnitWord{"centiliters", "cl"},
    UnitWord{"centilitre", "cl"},
    UnitWord{"centilitres", "cl"},
    UnitWord{"cl", "cl"},
    UnitWord{"cup", "cup"},
    UnitWord{"cupful", "cup"},
    UnitWord{"cupfuls", "cup"},
    UnitWord{"cups", "cup"},
    UnitWord{"dash", "dash"},
    UnitWord{"dashes", "dash"},
    UnitWord{"deciliter", "dl"},
    UnitWord{"deciliters", "dl"},
    UnitWord{"decilitre", "dl"},
    UnitWord{"decilitres", "dl"},
    UnitWord{"dessert-spoon", "dessertspoon"},
    UnitWord{"dessertspoon", "dessertspoon"},
    UnitWord{"dessertspoonful", "dessertspoon"},
    UnitWord{"dessertspoonfuls", "dessertspoon"},
    UnitWord{"dessertspoons", "dessertspoon"},
    UnitWord{"dl", "dl"},
    UnitWord{"drop", "drop"},
    UnitWord{"drops", "drop"},
    UnitWord{"dsp", "dessertspoon"},
    UnitWord{"floz", "fl oz"},
    UnitWord{"g", "g"},
    UnitWord{"gal", "gal"},
    UnitWord{"gallon", "gal"},
    UnitWord{"gallons", "gal"},
    UnitWord{"gals", "gal"},
    UnitWord{"gm", "g"},
    UnitWord{"gms", "g"},
    UnitWord{"gr", "g"},
    UnitWord{"gram", "g"},
    UnitWord{"gramme", "g"},
    UnitWord{"grammes", "g"},
    UnitWord{"grams", "g"},
    UnitWord{"grs", "g"},
    UnitWord{"gs", "g"},
    UnitWord{"kg", "kg"},
    UnitWord{"kgs", "kg"},
    UnitWord{"kilo", "kg"},
    UnitWord{"kilogram", "kg"},
    UnitWord{"kilogramme", "kg"},
    UnitWord{"kilogrammes", "kg"},
    UnitWord{"kilograms", "kg"},
    UnitWord{"kilos", "kg"},
    UnitWord{"l", "l"},
    UnitWord{"lb", "lb"},
    UnitWord{"lbs", "lb"},
    UnitWord{"liter", "l"},
    UnitWord{"liters", "l"},
    UnitWord{"litre", "l"},
    UnitWord{"litres", "l"},
    UnitWord{"ltr", "l"},
    UnitWord{"mg", "mg"},
    UnitWord{"milligram", "mg"},
    UnitWord{"milligrams", "mg"},
    UnitWord{"milliliter", "ml"},
    UnitWord{"milliliters", "ml"},
    UnitWord{"millilitre", "ml"},
    UnitWord{"millilitres", "ml"},
    UnitWord{"ml", "ml"},
    UnitWord{"mls", "ml"},
    UnitWord{"ounce", "oz"},
    UnitWord{"ounces", "oz"},
    UnitWord{"oz", "oz"},
    UnitWord{"ozs", "oz"},
    UnitWord{"pinch", "pinch"},
    UnitWord{"pinches", "pinch"},
    UnitWord{"pint", "pint"},
    UnitWord{"pints", "pint"},
    UnitWord{"pound", "lb"},
    UnitWord{"pounds", "lb"},
    UnitWord{"pt", "pint"},
    UnitWord{"pts", "pint"},
    UnitWord{"qt", "quart"},
    UnitWord{"qts", "quart"},
    UnitWord{"quart", "quart"},
    UnitWord{"quarts", "quart"},
    UnitWord{"table-spoon", "tbsp"},
    UnitWord{"tablespoon", "tbsp"},
    UnitWord{"tablespoonful", "tbsp"},
    UnitWord{"tablespoonfuls", "tbsp"},
    UnitWord{"tablespoons", "tbsp"},
    UnitWord{"tb", "tbsp"},
    UnitWord{"tbl", "tbsp"},
    UnitWord{"tblsp", "tbsp"},
    UnitWord{"tblsps", "tbsp"},
    UnitWord{"tbs", "tbsp"},
    UnitWord{"tbsp", "tbsp"},
    UnitWord{"tbsps", "tbsp"},
    UnitWord{"tea-spoon", "tsp"},
    UnitWord{"teaspoon", "tsp"},
    UnitWord{"teaspoonful", "tsp"},
    UnitWord{"teaspoonfuls", "tsp"},
    UnitWord{"teaspoons", "tsp"},
    UnitWord{"ts", "tsp"},
    UnitWord{"tsp", "tsp"},
    UnitWord{"tsps", "tsp"},
};

constexpr WordList kLengthWords{
    "\"",     "centimeter", "centimeters", "centimetre", "centimetres", "cm", "cms",    "inch",
    "inches", "millimeter", "millimeters", "millimetre", "millimetres", "mm", "\u2033",
};

/// Spoons of the United States go into the cup without a rest (NIST HB 44, appendix C).
constexpr WordTable kScales{
    UnitScale{"cl", 'v', 10, 1},       UnitScale{"cup", 'c', 48, 1},
    UnitScale{"dl", 'v', 100, 1},      UnitScale{"fl oz", 'c', 6, 1},
    UnitScale{"g", 'm', 1000, 1},      UnitScale{"gal", 'c', 768, 1},
    UnitScale{"imp fl oz", 'i', 1, 1}, UnitScale{"imp gal", 'i', 160, 1},
    UnitScale{"imp pint", 'i', 20, 1}, UnitScale{"kg", 'm', 1000000, 1},
    UnitScale{"l", 'v', 1000, 1},      UnitScale{"lb", 'p', 16, 1},
    UnitScale{"mg", 'm', 1, 1},        UnitScale{"ml", 'v', 1, 1},
    UnitScale{"oz", 'p', 1, 1},        UnitScale{"pint", 'c', 96, 1},
    UnitScale{"quart", 'c', 192, 1},   UnitScale{"tbsp", 'c', 3, 1},
    UnitScale{"tsp", 'c', 1, 1},       UnitScale{"us fl oz", 'c', 6, 1},
    UnitScale{"us pint", 'c', 96, 1},
};

/// The point of "tbsp." belongs to it.
std::size_t pastPoint(const LineScan& scan, std::size_t i) {
    return scan.isGlued(i) && scan.is(i, ".") ? i + 1 : i;
}

/// "fl oz", "fl. ozs.", "fluid ounces"; the token behind it, or `i`.
std::size_t fluidOunceEnd(const LineScan& scan, std::size_t i) {
    if (!scan.is(i, "fl") && !scan.is(i, "fluid")) return i;
    const std::size_t next = pastPoint(scan, i + 1);
    const UnitWord* ounce = kUnitWords.rowOf(scan.word(next));
    return ounce != nullptr && ounce->symbol == "oz" ? pastPoint(scan, next + 1) : i;
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
    const UnitWord* unit = kUnitWords.rowOf(scan.word(next));
    if (unit == nullptr) return std::nullopt;
    const std::size_t end = pastPoint(scan, next + 1);
    if (unit->symbol == "pint") return UnitRead{end, us ? "us pint" : "imp pint", {}};
    if (unit->symbol == "gal") return UnitRead{end, us ? "gal" : "imp gal", {}};
    if (us && (unit->symbol == "cup" || unit->symbol == "quart"))
        return UnitRead{end, unit->symbol, {}};
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
    const UnitWord* unit = kUnitWords.rowOf(scan.word(i));
    if (unit == nullptr) return std::nullopt;
    if (unit->symbol == "oz") return UnitRead{end, "oz", "fl oz"};
    return UnitRead{end, unit->symbol, {}};
}

std::size_t lengthUnitEnd(const LineScan& scan, std::size_t i) {
    if (kLengthWords.has(scan.word(i))) return scan.is(i + 1, ".") ? pastPoint(scan, i + 1) : i + 1;
    // "1-inch-thick"
    const std::size_t hyphen = scan.word(i).find('-');
    if (hyphen != std::string_view::npos && kLengthWords.has(scan.word(i).substr(0, hyphen)))
        return i + 1;
    return scan.is(i, "in") && scan.isGlued(i + 1) && scan.is(i + 1, ".") ? i + 2 : i;
}

const UnitScale* unitScale(std::string_view symbol) {
    return kScales.rowOf(symbol);
}

bool isPlainMass(std::string_view symbol) {
    return symbol == "g" || symbol == "kg" || symbol == "mg" || symbol == "lb";
}

}  // namespace nettare
