#pragma once

#include <iosfwd>
#include <string>
#include <vector>

namespace nettare {

/// Does what the arguments ask (without the program's name): results on `out`, one sentence for
/// each refusal on `err`. Answers the exit code: 0 done, 1 refused, 2 wrong usage.
[[nodiscard]] int runCommandLine(const std::vector<std::string>& arguments, std::ostream& out,
                                 std::ostream& err);

}  // namespace nettare
