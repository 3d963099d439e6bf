#pragma once

#include <span>

#include "db/sql_step.h"

namespace nettare {

/// The application_id in the header of a kitchen: "NtKi" in ASCII.
inline constexpr int kKitchenApplicationId = 0x4E744B69;

/// The steps of db/kitchen/schema in their order. The format of a kitchen (user_version) is the
/// number of steps that made it.
[[nodiscard]] std::span<const SqlStep> kitchenSchema();

/// The newest format that this program knows.
[[nodiscard]] inline int kitchenFormat() {
    return static_cast<int>(kitchenSchema().size());
}

}  // namespace nettare
