#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/food/own_food.h"

namespace nettare {

/// What can happen to an own food. Nothing is ever taken away: each is an entry, and so is what
/// takes it back.
enum class OwnFoodEventKind {
    Counts,    ///< a version counts from now on: a new one, or an earlier one again
    Retired,   ///< out of use: searches no longer show it
    Returned,  ///< in use again
    Merged,    ///< another food stands for it
    Parted,    ///< a food of its own again
};

struct OwnFoodEvent {
    std::string food;  ///< UUID
    OwnFoodEventKind kind{};
    int version = 0;    ///< Counts only
    std::string stays;  ///< Merged only: UUID of the food that stands for it
    std::string at;     ///< ISO 8601 with offset
};

/// An own food as it stands now.
struct OwnFoodRecord {
    OwnFood current;   ///< the version that counts
    int versions = 0;  ///< so many there are
    bool retired = false;
    std::optional<std::string> stays;  ///< UUID of the food that stands for it

    [[nodiscard]] const std::string& id() const { return current.food.row.number; }
    /// Whether searches show it.
    [[nodiscard]] bool inUse() const { return !retired && !stays; }
};

/// Where a row of a table is used.
struct FoodUse {
    std::string recipe;
    std::string title;                  ///< of the draft
    bool inDraft = false;               ///< else in revisions only
    TableRow draftRow;                  ///< that the draft uses; of an own food, which version
    std::optional<int> newestRevision;  ///< that uses it
};

}  // namespace nettare
