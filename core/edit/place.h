#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/support/json.h"

namespace nettare {

// Places of a document, as edit.h describes them.

/// What stands at a place; null where nothing does.
[[nodiscard]] const Json* valueAt(const Json& document, std::string_view place);
[[nodiscard]] Json* valueAt(Json& document, std::string_view place);

/// A place without its last step, and that step, unescaped. The place must not be empty.
struct PlaceParts {
    std::string_view parent;
    std::string step;
};
[[nodiscard]] PlaceParts partsOf(std::string_view place);

/// The index of a list's entry of that id.
[[nodiscard]] std::optional<std::size_t> indexOfId(const Json& list, std::string_view id);

}  // namespace nettare
