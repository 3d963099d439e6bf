#pragma once

#include "core/food/component.h"

#include <map>
#include <string>
#include <vector>

namespace nettare {

/// One row of tests/data/label/us_rounding_cases.csv or eu_rounding_cases.csv; the first says what
/// the columns are.
struct LabelCase {
    std::string id;
    std::string topic;
    std::map<std::string, std::string> input;
    std::vector<std::string> lawful;
    bool tie = false;
    std::string source;

    [[nodiscard]] double number(const std::string& key) const;
    /// True where this print is lawful and, in a tie, the one that goes up. A unit after it counts
    /// as printed.
    [[nodiscard]] bool accepts(const std::string& printed) const;
};

/// All rows of the US, or those of one topic; fails the test where there are none.
[[nodiscard]] std::vector<LabelCase> labelCases();
[[nodiscard]] std::vector<LabelCase> labelCases(const std::string& topic);

/// All rows of the EU.
[[nodiscard]] std::vector<LabelCase> euLabelCases();

/// The component that the file calls so: "vitamin_D", "saturated_fat".
[[nodiscard]] Component componentOfCase(const std::string& nutrient);

}  // namespace nettare
