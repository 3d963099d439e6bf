#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "app/scale/purpose.h"

namespace nettare {

/// Something of the open recipe that no scale has seen yet.
struct ToWeigh {
    Purpose purpose;
    QString what, why;            ///< "lemon juice", "assumed, 21 g"
    std::optional<double> grams;  ///< that the recipe asks for
};

/// Lines whose grams are assumed, what is left over and was not weighed, and the finished dish; in
/// the recipe's order.
[[nodiscard]] std::vector<ToWeigh> stillToWeigh(const DraftSession& draft);

}  // namespace nettare
