#include "app/compare/compare_choice.h"

#include "app/revisions/revision_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace nettare {

namespace {

struct CompareWords {
    Q_DECLARE_TR_FUNCTIONS(CompareWords)
};

}  // namespace

QString stateInSentence(StateOf state) {
    return state ? CompareWords::tr("revision %1").arg(*state) : CompareWords::tr("the draft");
}

CompareChoice::CompareChoice(std::vector<RevisionSummary> revisions)
    : revisions_{std::move(revisions)} {
    std::sort(revisions_.begin(), revisions_.end(),
              [](const auto& a, const auto& b) { return a.number < b.number; });
}

StateOf CompareChoice::stateAt(int index) const {
    const auto at = static_cast<std::size_t>(index);
    if (at >= revisions_.size()) return std::nullopt;
    return revisions_[at].number;
}

int CompareChoice::indexOf(StateOf state) const {
    const int draft = static_cast<int>(revisions_.size());
    if (!state) return draft;
    for (int i = 0; i < draft; ++i)
        if (stateAt(i) == state) return i;
    return -1;
}

const RevisionSummary* CompareChoice::revision(int number) const {
    const int index = indexOf(number);
    return index < 0 ? nullptr : &revisions_[static_cast<std::size_t>(index)];
}

std::vector<StripState> CompareChoice::strip() const {
    std::vector<StripState> states;
    for (const RevisionSummary& each : revisions_)
        states.push_back({QString::number(each.number), revisionTitle(each)});
    states.push_back({CompareWords::tr("draft"), CompareWords::tr("Draft"), true});
    return states;
}

QString CompareChoice::title(StateOf state) const {
    const RevisionSummary* const kept = state ? revision(*state) : nullptr;
    return kept == nullptr ? CompareWords::tr("Draft") : revisionTitle(*kept);
}

StatePair CompareChoice::newest(bool draftTouched) const {
    const int draft = static_cast<int>(revisions_.size());
    if (draftTouched || draft < 2) return {std::max(0, draft - 1), draft};
    return {draft - 2, draft - 1};
}

}  // namespace nettare
