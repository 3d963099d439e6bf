#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/recipe/recipe_document.h"

namespace nettare {

/// What became of some words of the method.
enum class WordsKind { Kept, Removed, Added };

/// Words in a row of which the same became, with single spaces between them.
struct WordsRun {
    WordsKind kind = WordsKind::Kept;
    std::string text;

    friend bool operator==(const WordsRun&, const WordsRun&) = default;
};

/// One step of two methods as one text: the runs of kept and removed words are the older step, of
/// kept and added words the newer.
struct StepDifference {
    std::optional<std::size_t> before, after;  ///< indices; nothing where it is not
    std::vector<WordsRun> runs;
};

/// The steps of two methods in their order; steps belong together where they are equal or, between
/// equal ones, where they share at least a third of their words.
[[nodiscard]] std::vector<StepDifference> comparedMethod(const std::vector<StepEntry>& before,
                                                         const std::vector<StepEntry>& after);

}  // namespace nettare
