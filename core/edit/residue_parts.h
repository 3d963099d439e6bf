#pragma once

#include "core/edit/edit_draft.h"
#include "core/edit/residue_edits.h"

namespace nettare {

// What the edits of residues, readings, lines and steps share.

/// The residue without its readings. Fails: UnknownReference.
[[nodiscard]] Result<Json> residueJson(const Json& document, const ResidueMakeup& makeup);

/// Takes a line out of every residue; a residue goes with its last line.
void takeOutOfResidues(const Json& document, std::string_view line, EditDraft& draft);

/// Number of the step at which a residue's lines were mixed, as an index; nothing where none is
/// said.
[[nodiscard]] std::optional<std::size_t> stepOf(const Json& residue);

/// Where steps moved, what was mixed at them follows: `to` answers the index of a step afterwards,
/// nothing where it goes.
template <class To>
void followSteps(const Json& document, EditDraft& draft, To to) {
    const Json::Array& residues = itemsOf(document, "residues");
    for (std::size_t i = 0; i < residues.size(); ++i) {
        const auto step = stepOf(residues[i]);
        if (!step) continue;
        const std::optional<std::size_t> now = to(*step);
        draft.set(pointerTo("/residues", i) + "/mixed_at",
                  now ? std::optional{Json{std::to_string(*now + 1)}} : std::nullopt);
    }
}

}  // namespace nettare
