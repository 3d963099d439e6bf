#pragma once

#include <string>

namespace nettare {

/// Appends what numberText() gives, without a text of its own.
void appendNumber(std::string& text, double value);

}  // namespace nettare
