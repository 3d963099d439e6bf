#pragma once

#include <QString>

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
/// "12.5 g"; empty where nothing was weighed back.
[[nodiscard]] QString leftShown(const DraftSession& draft);

}  // namespace nettare
