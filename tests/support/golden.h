#pragma once

#include <string>

namespace nettare {

/// Checks a text against tests/data/golden/NAME. With UPDATE_GOLDEN=1 in the environment the file
/// is written instead, for a person to read the difference before committing it.
void checkGolden(const std::string& name, const std::string& text);

}  // namespace nettare
