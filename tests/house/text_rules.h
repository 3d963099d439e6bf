#pragma once

#include <string>
#include <vector>

namespace nettare {

/// A file of the source tree as the rules of the house see it.
struct SourceFile {
    std::string name;  ///< path below the root, with slashes
    std::string bytes;
    bool executable = false;
};

/// One sentence for each rule that the file breaks, naming the first line that breaks it. Text ends
/// its lines in LF alone, has no blanks before a line end and ends in a line feed; sources have no
/// tabs; a .cpp or .h file has at most 600 lines; scripts, and only scripts, may be executed.
/// Binary files and tests/data keep the bytes that they need; only the last rule is for them too.
[[nodiscard]] std::vector<std::string> brokenRules(const SourceFile& file);

}  // namespace nettare
