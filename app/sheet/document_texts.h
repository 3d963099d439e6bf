#pragma once

#include <QString>

#include <string>
#include <string_view>

#include "core/support/json.h"

namespace nettare {

// What the screens read from the document of a draft.

/// The text of a member; empty where object or member is not there or is no text.
[[nodiscard]] std::string memberText(const Json* object, std::string_view key);

/// The items of a list of the document; none where it is not there.
[[nodiscard]] const Json::Array& entriesIn(const Json& document, std::string_view list);

/// The entry of that id; null where there is none.
[[nodiscard]] const Json* entryIn(const Json& document, std::string_view list, std::string_view id);

/// The title, as it stands.
[[nodiscard]] QString documentTitle(const Json& document);

/// What the cook calls a line: the name of its food.
[[nodiscard]] QString lineName(const Json& document, std::string_view line);

}  // namespace nettare
