#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "app/loading/kept_reference.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Every revision that a kitchen keeps, numbered through: recipes as `list` has them, by title, and
/// the revisions of each from the first on. Holds the recipes only.
class KeptRevisions {
public:
    /// Fails as Kitchen::recipes() does.
    [[nodiscard]] static Result<KeptRevisions> of(const Kitchen& kitchen);

    [[nodiscard]] std::size_t size() const { return size_; }
    /// `place` is less than size().
    [[nodiscard]] KeptReference at(std::size_t place) const;

private:
    struct Recipe {
        std::string id;
        std::size_t first;  ///< place of its revision 1
    };

    std::vector<Recipe> recipes_;  ///< those with a revision
    std::size_t size_ = 0;
};

}  // namespace nettare
