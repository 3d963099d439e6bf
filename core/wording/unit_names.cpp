#include "core/wording/unit_names.h"

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

}  // namespace

std::string_view unitNamed(std::string_view lower) {
    const UnitWord* row = kUnitWords.rowOf(lower);
    return row == nullptr ? std::string_view{} : row->symbol;
}

const UnitScale* unitScale(std::string_view symbol) {
    return kScales.rowOf(symbol);
}

bool isPlainMass(std::string_view symbol) {
    return symbol == "g" || symbol == "kg" || symbol == "mg" || symbol == "lb";
}

}  // namespace nettare
