#pragma once

#include "core/food/component.h"

#include <cstdint>
#include <set>
#include <string>

namespace nettare {

/// Every text that 21 CFR 101.9(c) lets stand for an amount given in thousandths of the component's
/// unit, both neighbours in a tie. Written from the regulation in whole numbers, apart from the
/// program's own rules. Vitamins and minerals: rounded to the step FDA recommends and, where that
/// is finer than one, also to the whole; below 2 % of the RDI also 0.
[[nodiscard]] std::set<std::string> lawfulPrints(Component component, std::int64_t thousandths);

}  // namespace nettare
