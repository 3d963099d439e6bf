#pragma once

#include <QString>

#include <vector>

#include "app/sheet/draft_member.h"
#include "core/edit/heading_edits.h"

namespace nettare {

/// Which ceiling or floor of a document is meant; there is at most one of each.
struct LimitKey {
    Component component = Component::ENERC_KCAL;
    Basis per = Basis::Portion;
    TargetEnd end = TargetEnd::AtMost;

    friend bool operator==(const LimitKey&, const LimitKey&) = default;
};

/// Those of a document, in its order; what is no target is left out.
[[nodiscard]] std::vector<LimitKey> limitsOf(const Json& document);

/// "Energy, at most, per portion": what the number of a limit is of.
[[nodiscard]] QString limitName(const LimitKey& key);
/// "at most", "at least".
[[nodiscard]] QString limitEnd(TargetEnd end);
/// "per portion", in words that need no recipe.
[[nodiscard]] QString limitBasis(Basis per);

/// Its number as a field of the draft. An empty text is refused: a limit is taken away by its
/// button, not by the way.
[[nodiscard]] DraftMember limitMember(const LimitKey& key);

}  // namespace nettare
