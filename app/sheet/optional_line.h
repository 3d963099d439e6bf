#pragma once

#include <QString>

#include <string>

#include "app/session/draft_session.h"

namespace nettare {

/// Marks a line as optional, or as one that the recipe needs again. No line, nothing happens.
/// Fails as setOptional().
[[nodiscard]] Result<void> toggleOptional(DraftSession& draft, const std::string& line);

/// What stands beside the food in muted ink: "optional · chopped".
[[nodiscard]] QString withOptional(const Json& line, const QString& preparation);

}  // namespace nettare
