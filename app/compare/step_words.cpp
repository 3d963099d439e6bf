#include "app/compare/step_words.h"

#include <QCoreApplication>

#include <utility>

namespace nettare {

namespace {

WordsOn sideOf(WordsKind kind) {
    switch (kind) {
        case WordsKind::Kept:
            break;
        case WordsKind::Removed:
            return WordsOn::LeftOnly;
        case WordsKind::Added:
            return WordsOn::RightOnly;
    }
    return WordsOn::Both;
}

/// The old words before those that took their place, whichever way the script found them.
std::vector<WordsRun> oldFirst(std::vector<WordsRun> runs) {
    for (std::size_t i = 1; i < runs.size(); ++i)
        if (runs[i - 1].kind == WordsKind::Added && runs[i].kind == WordsKind::Removed)
            std::swap(runs[i - 1], runs[i]);
    return runs;
}

QString numberOf(const StepDifference& step) {
    const std::size_t index = step.after ? *step.after : *step.before;
    QString number =
        QCoreApplication::translate("StepWords", "%1.").arg(static_cast<qulonglong>(index) + 1);
    if (step.before && step.after) return number;
    return (step.after ? QStringLiteral("+ ") : QString::fromUtf8("− ")) + number;
}

}  // namespace

std::vector<ComparedStep> stepWords(const std::vector<StepDifference>& method) {
    std::vector<ComparedStep> steps;
    for (const StepDifference& each : method) {
        ComparedStep step{numberOf(each), {}};
        for (const WordsRun& run : oldFirst(each.runs)) {
            if (!step.runs.empty()) step.runs.push_back({WordsOn::Both, QStringLiteral(" ")});
            step.runs.push_back({sideOf(run.kind), QString::fromStdString(run.text)});
        }
        steps.push_back(std::move(step));
    }
    return steps;
}

}  // namespace nettare
