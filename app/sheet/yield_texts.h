#pragma once

#include <QString>

#include <vector>

#include "app/scale/left_over.h"
#include "app/session/draft_session.h"

namespace nettare {

// What the row below the title shows, each as the cook would type it.

/// "10 skewers"
[[nodiscard]] QString makesShown(const DraftSession& draft);
/// "2 skewers", "150 g"
[[nodiscard]] QString portionShown(const DraftSession& draft);
/// "150 kcal"; empty where there is no ceiling on energy.
[[nodiscard]] QString ceilingShown(const DraftSession& draft);
/// "742 g", as eaten; empty where it was not weighed.
[[nodiscard]] QString cookedShown(const DraftSession& draft);

/// One thing left over.
struct ShownResidue {
    LeftOver left;
    QString text;   ///< "12.5 g marinade", "40.0 g olive oil"
    QString foods;  ///< all that it is of; may be empty
};
/// All that was left over, in the document's order.
[[nodiscard]] std::vector<ShownResidue> residuesShown(const DraftSession& draft);

}  // namespace nettare
