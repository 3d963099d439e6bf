#include "db/import/fdc_measure.h"

#include "core/support/text.h"
#include "db/import/one_line.h"
#include "db/import/scaled_number.h"
#include "db/import/sr28_measure.h"

namespace nettare {

namespace {

constexpr std::size_t kLongestUnit = 200;

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

std::optional<HouseholdMeasure> fdcMeasure(const FdcPortion& portion, std::string_view foodName) {
    const std::string description = oneLine(portion.description);
    const std::string modifier = oneLine(portion.modifier);
    const bool unitKnown = !portion.unit.empty() && portion.unit != "undetermined";
    // Survey foods have their words in the description, and a code as modifier.
    std::string_view text = portion.unit;
    if (!unitKnown) text = description.empty() ? modifier : description;
    if (text.empty() || lowerAscii(text) == "quantity not specified") return std::nullopt;
    HouseholdMeasure measure;
    measure.amount = readScaledNumber(trimmed(portion.amount)).value_or(1);
    if (const auto amount = takeAmount(text); amount && portion.amount.empty())
        measure.amount = *amount;
    // The words are those of the Standard Reference.
    Sr28Measure read = readSr28Measure(text, foodName, measure.amount > 1);
    if (unitKnown) read.qualifier = modifier.empty() ? description : modifier;
    if (read.unit.empty()) return std::nullopt;
    measure.unit = shortened(read.unit, kLongestUnit);
    measure.qualifier = shortened(read.qualifier, kLongestUnit);
    return measure;
}

}  // namespace nettare
