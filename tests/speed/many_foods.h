#pragma once

#include <string>

namespace nettare {

/// Writes a table file of so many foods: the names of another table again and again, each time
/// with a number behind them. It has what a search needs, and no values.
void writeManyFoods(const std::string& table, int foods, const std::string& path);

}  // namespace nettare
