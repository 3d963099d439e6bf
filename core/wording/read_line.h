#pragma once

#include <string_view>

#include "core/wording/line_reading.h"

namespace nettare {

/// What a cook wrote on one line of a list of ingredients, in English with the words of Britain,
/// America and Australia, metric units and European number marks. Every text has a reading: what is
/// not understood stands in its rest. Double meanings are kept, not decided; see line_questions.h.
/// Any bytes will do. Of more than kMostLineBytes bytes the further ones are rest.
[[nodiscard]] LineReading readLine(std::string_view text);

}  // namespace nettare
