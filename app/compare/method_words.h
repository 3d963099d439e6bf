#pragma once

#include <QString>

#include <vector>

namespace nettare {

/// Words of a step that both sides have, or only one of them.
enum class WordsOn { Both, LeftOnly, RightOnly };

struct WordRun {
    WordsOn side = WordsOn::Both;
    QString text;
};

/// One step of the method, of both sides as one text.
struct ComparedStep {
    QString number;
    std::vector<WordRun> runs;

    [[nodiscard]] bool changed() const;
    /// The step as a screen reader says it: what was removed and what was added, by word.
    [[nodiscard]] QString spoken() const;
};

}  // namespace nettare
