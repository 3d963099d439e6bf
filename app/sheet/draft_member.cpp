#include "app/sheet/draft_member.h"

#include "app/sheet/draft_sentence.h"

namespace nettare {

void DraftMember::setDraft(DraftSession* draft) {
    draft_ = draft;
    step_ = 0;
    refusal_.reset();
}

void DraftMember::takeBack() {
    if (draft_ == nullptr) return;
    QUndoStack& stack = draft_->undoStack();
    if (step_ > 0 && stack.index() == step_) stack.undo();
    step_ = 0;
}

// A text on its way passes by others: "3 tb" means another unit than "3 tbsp" and would end the
// line's binding to its weighing. So each text is read against the state before the first.
bool DraftMember::type(const QString& text) {
    if (draft_ == nullptr) return false;
    QUndoStack& stack = draft_->undoStack();
    const bool again = step_ > 0 && stack.index() == step_;
    if (!again) before_ = draft_->document();
    auto edit = typed_(before_, text.trimmed().toStdString());
    const bool changes = edit && !changesNothing(*edit);
    typing_ = true;
    Result<void> done = fail(ErrorCode::EmptyText);
    if (!edit) {
        if (again) stack.undo();
        done = fail(edit.error());
    } else {
        done = again ? draft_->retype(*edit, before_) : draft_->apply(*edit);
    }
    refusal_ = done ? std::nullopt : std::optional{done.error()};
    step_ = changes && done ? stack.index() : 0;
    typing_ = false;
    return done.has_value();
}

std::optional<Error> DraftMember::problem() const {
    if (refusal_ || draft_ == nullptr || !draft_->failure() || !concerns_) return refusal_;
    return concerns_(*draft_, draft_->failure()->pointer) ? draft_->failure() : std::nullopt;
}

QString DraftMember::complaint() const {
    const auto wrong = problem();
    if (!wrong || draft_ == nullptr) return {};
    return draftSentence(draft_->document(), *wrong);
}

void DraftMember::leave() {
    step_ = 0;
    if (draft_ != nullptr) draft_->endTyping();
}

DraftMember::Concerns concernsPointer(std::string pointer) {
    return [pointer = std::move(pointer)](const DraftSession&, const std::string& failing) {
        return failing == pointer || failing.starts_with(pointer + "/");
    };
}

}  // namespace nettare
