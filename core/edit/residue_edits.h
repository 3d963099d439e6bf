#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/edit/edit.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

// Edits of what is left over. Residues go by their index, since they have no id. Fail:
// EditDoesNotFit where there is no such residue; UnknownReference for a line, food or step that is
// not there; or as readRecipe(), at the place. A recipe stays one.

/// What a residue is made of, as the cook says it.
struct ResidueMakeup {
    ResidueKind kind = ResidueKind::Unknown;
    std::vector<std::string> lines{};  ///< ids; one of Line, at least one of Mixture
    std::vector<ShareEntry> shares{};  ///< of Mixture: how much of a line was in
    std::string mixedAt{};             ///< of Mixture: number of a step, from 1; may be empty
    std::string food{};                ///< id, of Drip
    std::string called{};              ///< "frying oil"; may be empty

    /// One line, or a mixture of several; none: of unknown make-up.
    [[nodiscard]] static ResidueMakeup ofLines(std::vector<std::string> lines);
};

/// A new residue with these readings, at least one.
[[nodiscard]] Result<Edit> addResidue(const Json& document, const ResidueMakeup& makeup,
                                      const std::vector<std::string>& readings);

/// Another make-up for a residue; its readings stay.
[[nodiscard]] Result<Edit> setResidueMakeup(const Json& document, std::size_t residue,
                                            const ResidueMakeup& makeup);

/// Takes a residue away; its readings stay.
[[nodiscard]] Result<Edit> removeResidue(const Json& document, std::size_t residue);

}  // namespace nettare
