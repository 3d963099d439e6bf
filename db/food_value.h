#pragma once

#include <optional>
#include <string>

namespace nettare {

/// One published value of a table food, with all that the table says of it: also of components
/// that the program does not compute with.
struct FoodValue {
    std::string tagname;  ///< INFOODS; empty where there is none
    std::string number;   ///< the publisher's own, "208"; empty where the file has none
    std::string name;     ///< "energy"
    std::string unit;     ///< of value and standard error
    double per100g = 0;   ///< edible portion
    std::optional<double> standardError;
    int n = 0;               ///< data points; 0 where none are published
    std::string derivation;  ///< how it came about, in the publisher's words; empty where not told
    std::string source;      ///< what kind of data it rests on; empty where not told
};

}  // namespace nettare
