#pragma once

#include <QString>

#include "app/session/kitchen_session.h"

namespace nettare {

/// "draft on revision 7 · saved 2 s ago": what the draft is and how far the journal is. Empty where
/// no recipe is open.
[[nodiscard]] QString savedText(const KitchenSession& kitchen);

/// The number that the next revision of the open recipe gets.
[[nodiscard]] int nextRevision(const KitchenSession& kitchen);

}  // namespace nettare
