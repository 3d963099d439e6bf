#include <fmt/core.h>

#include "core/nutrition/block_parts.h"
#include "core/publish/measure_text.h"
#include "core/publish/path_work.h"

namespace nettare {

namespace {

/// What is known of the component in all leaves.
double knownOfLeaves(const PathWork& work) {
    double known = 0;
    for (const Leaf& leaf : work.cooked.eaten.leaves) known += contentOf(work, leaf).value();
    return known;
}

PathDraft endDraft(const PathWork& work, double value, const char* words) {
    PathDraft end = pathDraft(PathKind::Missing, std::string{work.facts.unit}, words);
    end.value = value;
    end.decimals = work.decimals();
    return end;
}

/// - (1.2 + 3.4) / 2, the middle of what it may hold.
PathDraft middleDraft(const PathWork& work, const UnknownResidue& residue,
                      const UnknownRange& range) {
    PathDraft draft =
        pathDraft(PathKind::Missing, std::string{work.facts.unit},
                  fmt::format("{} g left over of unknown make-up: the middle of its leanest and "
                              "its richest line, never more than there is",
                              shortNumber(residue.grams.value())));
    draft.decimals = work.decimals();
    draft.negative = true;
    draft.rule = PathRule::Formula;
    PathFactor sum;
    for (const double end : {range.low, range.high}) {
        PathNumber number{end, work.decimals(), work.unit()};
        number.below = draft.below.size();
        sum.sum.push_back(std::move(number));
        draft.below.push_back(endDraft(work, end,
                                       draft.below.empty()
                                           ? "if it were the leanest of its lines"
                                           : "if it were the richest of its lines"));
    }
    draft.factors.push_back(std::move(sum));
    return draft.by(pathNumber(2), true).computed();
}

}  // namespace

std::vector<PathDraft> unknownDrafts(PathWork& work) {
    std::vector<PathDraft> drafts;
    double there = knownOfLeaves(work);
    for (const UnknownResidue& residue : work.cooked.eaten.unknown) {
        const UnknownRange range =
            rangeOf(residue, indexOf(work.component), there, work.cooked.compositions);
        there -= (range.low + range.high) / 2;
        drafts.push_back(middleDraft(work, residue, range));
        if (work.end == PathEnd::Most)
            drafts.push_back(
                endDraft(work, range.beyondLow, "that residue, if foods without data hold less"));
        if (work.end == PathEnd::Least)
            drafts.push_back(endDraft(work, -range.beyondHigh.value_or(0),
                                      "that residue, if foods without data hold more"));
    }
    return drafts;
}

}  // namespace nettare
