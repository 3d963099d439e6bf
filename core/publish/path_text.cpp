#include "core/publish/path.h"

namespace nettare {

namespace {

constexpr std::size_t kIndent = 4;

void addPathStep(const PathStep& step, std::size_t depth, std::string& text) {
    const std::string indent(kIndent * depth, ' ');
    text += indent + step.value + " " + step.unit;
    if (!step.plusMinus.empty()) text += " ± " + step.plusMinus;
    if (!step.formula.empty()) text += " = " + step.formula;
    if (!step.words.empty()) text += "  " + step.words;
    text += "\n";
    // What stands beside the figure itself is the heading.
    if (!step.more.empty() && depth > 0) text += indent + "  (" + step.more + ")\n";
    for (const PathStep& below : step.below) addPathStep(below, depth + 1, text);
}

}  // namespace

std::string pathText(const PathStep& path) {
    std::string text =
        "Where " + path.value + " " + path.unit + " comes from\n" + path.more + "; ± is 95 %\n\n";
    addPathStep(path, 0, text);
    return text;
}

}  // namespace nettare
