#pragma once

#include "core/food/component.h"
#include "core/quantity/decimal.h"

#include <string_view>

namespace nettare {

/// Which of the two lists of 21 CFR 101.9 a daily value stands in; they round differently.
enum class DailyValueKind {
    ReferenceValue,     ///< DRV, (c)(9): percent to the nearest whole
    RecommendedIntake,  ///< RDI, (c)(8)(iv): percent in steps of 2, 5 and 10
};

/// A daily value for adults and children of 4 years and older, rule of 2016 (81 FR 33742). Values
/// that circulate from before 2016 differ.
struct UsDailyValue {
    Component component;
    DailyValueKind kind;
    Decimal amount;           ///< in the component's unit
    std::string_view source;  ///< paragraph, and "from memory" where not read at the source
};

/// The daily value of a component; null where it has none, which prints no percent.
[[nodiscard]] const UsDailyValue* usDailyValue(Component component);

}  // namespace nettare
