#include "app/scale/left_over_edit.h"

#include "app/sheet/document_texts.h"
#include "core/edit/line_parts.h"

namespace nettare {

namespace {

ResidueMakeup makeupOf(const LeftOver& left) {
    ResidueMakeup makeup;
    makeup.kind = left.kind;
    makeup.lines = left.lines;
    makeup.shares = left.shares;
    if (left.mixedAt) makeup.mixedAt = std::to_string(*left.mixedAt);
    makeup.food = left.drip.existing;
    makeup.called = left.called;
    return makeup;
}

/// Several edits as one, each of the document after the one before.
class Sequence {
public:
    explicit Sequence(const Json& document) : document_{document} {}

    [[nodiscard]] const Json& document() const { return document_; }
    Result<void> add(Result<Edit> next) {
        if (!next) return fail(next.error());
        auto after = applied(document_, *next);
        if (!after) return fail(after.error());
        document_ = std::move(*after);
        edit_.kind = next->kind;
        edit_.subject = next->subject;
        edit_.changes.insert(edit_.changes.end(), next->changes.begin(), next->changes.end());
        return {};
    }
    [[nodiscard]] Edit take() { return std::move(edit_); }

private:
    Json document_;
    Edit edit_;
};

/// The food that ran off as one of the document's, which gets it where it has it not.
Result<void> addFood(Sequence& sequence, LeftOver& left) {
    const Json before = sequence.document();
    EditDraft draft{before, EditKind::Residue, left.drip.name};
    auto food = foodFor(before, left.drip, draft);
    if (!food) return fail(food.error());
    left.drip.existing = *food;
    return sequence.add(draft.take());
}

}  // namespace

Result<Edit> leftOverEdit(const Json& document, RecordedReading reading, const LeftOver& chosen) {
    LeftOver left = chosen;
    Sequence sequence{document};
    if (left.kind == ResidueKind::Drip)
        if (auto done = addFood(sequence, left); !done) return fail(done.error());
    const auto there = residueLike(document, left);
    if (there)
        if (auto done = sequence.add(setResidueMakeup(document, *there, makeupOf(left))); !done)
            return fail(done.error());
    reading.purpose = ForLeftOver{{}, makeupOf(left)};
    if (auto done = sequence.add(recordReading(sequence.document(), reading)); !done)
        return fail(done.error());
    return sequence.take();
}

}  // namespace nettare
