#pragma once

#include <string>
#include <vector>

#include "core/publish/compared_method.h"

namespace nettare {

/// A word, or a whole step, and what became of it.
struct ScriptWord {
    WordsKind kind;
    std::string word;
};

/// The shortest way from one sequence to the other: what is kept, removed and added, in order (Wu,
/// Manber, Myers and Miller, An O(NP) sequence comparison algorithm, 1990, by libdtl).
[[nodiscard]] std::vector<ScriptWord> wordScript(const std::vector<std::string>& before,
                                                 const std::vector<std::string>& after);

}  // namespace nettare
