#include "core/publish/compared_method.h"

#include <algorithm>

#include "core/publish/word_script.h"
#include "core/support/text.h"

namespace nettare {

namespace {

using Steps = std::vector<StepEntry>;

std::vector<std::string> wordsOf(const StepEntry& step) {
    const auto found = words(step.text);
    return {found.begin(), found.end()};
}

std::vector<WordsRun> runsOf(const std::vector<ScriptWord>& script) {
    std::vector<WordsRun> runs;
    for (const auto& [kind, word] : script) {
        if (runs.empty() || runs.back().kind != kind)
            runs.push_back({kind, word});
        else
            (runs.back().text += ' ') += word;
    }
    return runs;
}

StepDifference onOneSide(WordsKind kind, std::size_t index, const StepEntry& step) {
    StepDifference difference;
    (kind == WordsKind::Removed ? difference.before : difference.after) = index;
    std::vector<ScriptWord> script;
    for (const std::string& word : wordsOf(step)) script.push_back({kind, word});
    difference.runs = runsOf(script);
    return difference;
}

/// True where the two steps share at least a third of the longer one's words.
bool areAlike(const std::vector<ScriptWord>& script) {
    const auto count = [&](WordsKind kind) {
        return std::ranges::count(script, kind, &ScriptWord::kind);
    };
    const auto longer = std::max(count(WordsKind::Removed), count(WordsKind::Added));
    return 3 * count(WordsKind::Kept) >= count(WordsKind::Kept) + longer;
}

/// Steps between two equal ones: from the front, two that are alike are one.
void addChanged(const Steps& before, std::size_t& b, std::size_t bEnd, const Steps& after,
                std::size_t& a, std::size_t aEnd, std::vector<StepDifference>& all) {
    while (b < bEnd && a < aEnd) {
        const auto script = wordScript(wordsOf(before[b]), wordsOf(after[a]));
        if (areAlike(script)) {
            all.push_back({b++, a++, runsOf(script)});
        } else if (bEnd - b >= aEnd - a) {
            all.push_back(onOneSide(WordsKind::Removed, b, before[b]));
            ++b;
        } else {
            all.push_back(onOneSide(WordsKind::Added, a, after[a]));
            ++a;
        }
    }
    for (; b < bEnd; ++b) all.push_back(onOneSide(WordsKind::Removed, b, before[b]));
    for (; a < aEnd; ++a) all.push_back(onOneSide(WordsKind::Added, a, after[a]));
}

std::vector<std::string> textsOf(const Steps& steps) {
    std::vector<std::string> texts;
    for (const StepEntry& step : steps) texts.push_back(step.text);
    return texts;
}

}  // namespace

std::vector<StepDifference> comparedMethod(const Steps& before, const Steps& after) {
    std::vector<StepDifference> all;
    std::size_t b = 0, a = 0;          // up to here it is told
    std::size_t bSeen = 0, aSeen = 0;  // up to here the script was read
    for (const ScriptWord& step : wordScript(textsOf(before), textsOf(after))) {
        if (step.kind == WordsKind::Kept) {
            addChanged(before, b, bSeen, after, a, aSeen, all);
            all.push_back({b, a, runsOf(wordScript(wordsOf(before[b]), wordsOf(after[a])))});
            ++b;
            ++a;
        }
        bSeen += step.kind != WordsKind::Added ? 1 : 0;
        aSeen += step.kind != WordsKind::Removed ? 1 : 0;
    }
    addChanged(before, b, before.size(), after, a, after.size(), all);
    return all;
}

}  // namespace nettare
