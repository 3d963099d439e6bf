#pragma once

#include <string>

namespace nettare {

/// What a program of a Debian package prints. Fails the test where it is missing, with a sentence
/// that names the package, and where it does not end well.
std::string printedByTool(const std::string& package, const std::string& command);

}  // namespace nettare
