#pragma once

#include <cstddef>
#include <string_view>

#include "core/edit/edit.h"

namespace nettare {

// Edits of the method; steps go by their index. Fail: EditDoesNotFit where there is no such step,
// EmptyText, TextTooLong or TextNotClean for the text, TooManyItems.

/// The new step gets that index, at most the number of steps.
[[nodiscard]] Result<Edit> addStep(const Json& document, std::size_t at, std::string_view typed);
[[nodiscard]] Result<Edit> changeStep(const Json& document, std::size_t at, std::string_view typed);
[[nodiscard]] Result<Edit> removeStep(const Json& document, std::size_t at);
/// `to` is its index afterwards.
[[nodiscard]] Result<Edit> moveStep(const Json& document, std::size_t from, std::size_t to);

}  // namespace nettare
