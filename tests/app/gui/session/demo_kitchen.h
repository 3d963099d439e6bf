#pragma once

#include <memory>
#include <string>

#include "app/session/kitchen_session.h"
#include "core/support/json.h"

namespace nettare {

/// The document of the skewers as the demo has it.
[[nodiscard]] Json skewersDocument();

/// The starter table of the build tree.
[[nodiscard]] std::string starterTable();

/// A kitchen in memory with the skewers as its only recipe, opened.
[[nodiscard]] std::unique_ptr<KitchenSession> skewersSession();

/// Lets the session do all it has to; its shelf, draft and revisions are then as they will be.
void rest(KitchenSession& session);

}  // namespace nettare
