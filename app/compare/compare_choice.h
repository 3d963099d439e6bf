#pragma once

#include "app/compare/state_strip.h"

#include <optional>
#include <vector>

#include "db/kitchen/kitchen.h"

namespace nettare {

/// A state of the open recipe: a revision, by its number, or the draft.
using StateOf = std::optional<int>;

/// "revision 4", "the draft", within a sentence.
[[nodiscard]] QString stateInSentence(StateOf state);

/// The states of a recipe that can be compared: its revisions in their order, then the draft.
class CompareChoice {
public:
    CompareChoice() = default;
    explicit CompareChoice(std::vector<RevisionSummary> revisions);

    [[nodiscard]] std::size_t count() const { return revisions_.size() + 1; }
    /// Nothing for the draft; `index` is one of the strip's.
    [[nodiscard]] StateOf stateAt(int index) const;
    /// -1 where there is no such revision.
    [[nodiscard]] int indexOf(StateOf state) const;
    [[nodiscard]] const RevisionSummary* revision(int number) const;
    [[nodiscard]] std::vector<StripState> strip() const;
    /// "Revision 4 · 12 March 2026 · “oilier”", "Draft".
    [[nodiscard]] QString title(StateOf state) const;
    /// The two newest states, where a draft that was not touched counts as none.
    [[nodiscard]] StatePair newest(bool draftTouched) const;

private:
    std::vector<RevisionSummary> revisions_;
};

}  // namespace nettare
