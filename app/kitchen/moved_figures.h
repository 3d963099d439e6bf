#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/publish/moved_figures.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// A kept revision that another version of a food would move.
struct MovedRevision {
    std::string recipe, title;
    int revision = 0;
    std::vector<MovedFigure> figures;  ///< never empty unless `failure`
    std::vector<std::string> places;   ///< what each is per: "per skewer", "on the panel"
    std::optional<Error> failure;      ///< why it has no figures with the other version
};

/// What a new version of an own food would move: of each recipe its newest revision that was kept
/// with another version of that food, in itself or in a kept recipe of it, by title. Only that food
/// is changed; all else stays as pinned. `id` is its UUID; `next` need not be saved yet. Revisions
/// that nothing moves in are left out. Nothing is written; may run in any thread that has the
/// kitchen. Fails: as reading a kitchen does.
[[nodiscard]] Result<std::vector<MovedRevision>> figuresMovedBy(const Kitchen& kitchen,
                                                                const std::string& id,
                                                                const TableFood& next);

}  // namespace nettare
