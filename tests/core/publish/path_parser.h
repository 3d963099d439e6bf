#pragma once

#include <boost/multiprecision/cpp_int.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "core/publish/path.h"

namespace path_parser {

using Rational = boost::multiprecision::cpp_rational;

/// A number as it is printed: digits in groups by U+202F, a decimal point, U+2212 for minus.
struct Printed {
    Rational value;
    int decimals = 0;
};

/// One row of the text of a path. Nothing is read but what is printed.
struct Row {
    std::size_t depth = 0;
    bool bounded = false;  ///< "at least"
    Printed value;
    std::string formula;  ///< empty where it has none
    std::vector<Row> below;
};

/// The rows of pathText() as a tree, without its heading. Throws std::runtime_error on what is no
/// row.
[[nodiscard]] Row readPath(std::string_view text);

/// What a formula of numbers, units, × / + − and brackets gives, exactly. The words "rounded down"
/// and "rounded up" at its end are left to prints().
[[nodiscard]] Rational evaluated(std::string_view formula);

/// The first row whose formula or sum, first written with 12 significant digits and then rounded to
/// the decimals of its value, ties up, is not its value; empty where all rows are right. Counts the
/// rows that have a formula.
[[nodiscard]] std::string firstWrongRow(const Row& row, int& formulas);

}  // namespace path_parser
