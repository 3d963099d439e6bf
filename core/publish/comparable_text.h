#pragma once

#include <string>
#include <string_view>

#include "core/publish/comparable.h"

namespace nettare {

/// "not comparable: what stayed in the bowl was weighed only in revision 2". The states as the
/// sentence is to name them: "revision 2", "the draft".
[[nodiscard]] std::string notComparableText(const NotComparable& reason, std::string_view before,
                                            std::string_view after);

}  // namespace nettare
