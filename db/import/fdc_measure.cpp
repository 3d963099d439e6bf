#include "db/import/fdc_measure.h"

#include <array>
#include <utility>

#include "core/support/text.h"
#include "db/import/one_line.h"
#include "db/import/scaled_number.h"

namespace nettare {

namespace {

constexpr std::size_t kLongestUnit = 200;

// Names of measure_unit.csv (FoodData Central download, from memory) as our documents write them.
constexpr std::array<std::pair<std::string_view, std::string_view>, 12> kUnitSymbols{{
    {"tablespoon", "tbsp"},
    {"tablespoons", "tbsp"},
    {"teaspoon", "tsp"},
    {"teaspoons", "tsp"},
    {"cups", "cup"},
    {"fl oz", "fl_oz"},
    {"fluid ounce", "fl_oz"},
    {"liter", "l"},
    {"milliliter", "ml"},
    {"pints", "pint"},
    {"quarts", "quart"},
    {"pound", "lb"},
}};

std::string unitSymbol(std::string_view written) {
    for (const auto& [name, symbol] : kUnitSymbols)
        if (name == written) return std::string{symbol};
    return shortened(written, kLongestUnit);
}

/// "cup, chopped" and "medium (3 inch)" in two; only the first where there is nothing behind it.
std::pair<std::string_view, std::string_view> unitAndQualifier(std::string_view text) {
    const std::size_t comma = text.find(',');
    const std::size_t bracket = text.find(" (");
    if (comma < bracket) return {trimmed(text.substr(0, comma)), trimmed(text.substr(comma + 1))};
    if (bracket != std::string_view::npos && text.ends_with(')'))
        return {trimmed(text.substr(0, bracket)),
                text.substr(bracket + 2, text.size() - bracket - 3)};
    return {text, {}};
}

/// Takes "1 " or "0.5 " from the front.
std::optional<double> takeAmount(std::string_view& text) {
    const std::size_t end = text.find(' ');
    if (end == std::string_view::npos) return std::nullopt;
    const auto amount = readScaledNumber(text.substr(0, end));
    if (!amount || *amount <= 0) return std::nullopt;
    text = trimmed(text.substr(end));
    return amount;
}

}  // namespace

std::optional<HouseholdMeasure> fdcMeasure(const FdcPortion& portion) {
    const std::string description = oneLine(portion.description);
    const std::string modifier = oneLine(portion.modifier);
    const bool unitKnown = !portion.unit.empty() && portion.unit != "undetermined";
    HouseholdMeasure measure;
    measure.amount = readScaledNumber(trimmed(portion.amount)).value_or(1);
    if (unitKnown) {
        measure.unit = unitSymbol(portion.unit);
        measure.qualifier = shortened(modifier.empty() ? description : modifier, kLongestUnit);
        return measure;
    }
    // Survey foods have their words in the description, and a code as modifier.
    std::string_view text = description.empty() ? modifier : description;
    if (text.empty() || lowerAscii(text) == "quantity not specified") return std::nullopt;
    if (const auto amount = takeAmount(text); amount && portion.amount.empty())
        measure.amount = *amount;
    const auto [unit, qualifier] = unitAndQualifier(text);
    if (unit.empty()) return std::nullopt;
    measure.unit = unitSymbol(unit);
    measure.qualifier = shortened(qualifier, kLongestUnit);
    return measure;
}

}  // namespace nettare
