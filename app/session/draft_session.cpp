#include "app/session/draft_session.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "app/session/edit_command.h"

namespace nettare {

DraftSession::DraftSession(QString recipe, const StoredDraft& draft, Closure closure, bool readOnly,
                           QObject* parent)
    : QObject{parent},
      recipe_{std::move(recipe)},
      document_{draft.base},
      baseRevision_{draft.baseRevision},
      closure_{std::move(closure)},
      readOnly_{readOnly} {
    restore(draft);
    // The stack speaks once per undo or redo, after the command changed the document.
    connect(&stack_, &QUndoStack::indexChanged, this, [this] {
        if (!restoring_) emit journalGrew();
    });
}

// A stack that ends empties itself and says so; nothing of that is for the journal.
DraftSession::~DraftSession() {
    stack_.disconnect(this);
}

// The undo history of the journal, with its undone edits, as if it had been typed here.
void DraftSession::restore(const StoredDraft& draft) {
    restoring_ = true;
    for (const Edit& edit : draft.edits) {
        auto after = applied(document_, edit);
        if (!after) break;
        endTyping();
        push(edit, std::move(*after));
    }
    const auto cursor = std::min(draft.cursor, static_cast<std::size_t>(stack_.count()));
    stack_.setIndex(static_cast<int>(cursor));
    endTyping();
    toldEdits_ = static_cast<std::size_t>(stack_.count());
    journalEdits_ = draft.edits.size();
    toldCursor_ = cursor;
    restoring_ = false;
    evaluate();
}

void DraftSession::push(const Edit& edit, Json after, bool inItsStead) {
    const auto indexBefore = static_cast<std::size_t>(stack_.index());
    stack_.push(
        new EditCommand{{[this]() -> const Json& { return document_; },
                         [this](Json document) { changeTo(std::move(document)); }},
                        edit,
                        std::move(after),
                        typing_,
                        inItsStead ? EditCommand::Place::InItsStead : EditCommand::Place::Next});
    // The step at the top is new, merged into, or gone.
    const auto indexAfter = static_cast<std::size_t>(stack_.index());
    const std::size_t firstChanged =
        std::min(indexBefore, indexAfter == 0 ? std::size_t{0} : indexAfter - 1);
    toldEdits_ = std::min(toldEdits_, firstChanged);
}

void DraftSession::changeTo(Json document) {
    document_ = std::move(document);
    if (restoring_) return;
    emit documentChanged();
    evaluate();
}

void DraftSession::evaluate() {
    auto figures = evaluated(document_, closure_, figures_.get(), meaning_);
    if (figures) {
        figures_ = std::move(*figures);
        failure_.reset();
    } else {
        failure_ = figures.error();
    }
    emit evaluationChanged();
}

// Figures that are shown though the text as it stands has none change their meaning as well.
void DraftSession::setMeaning(Meaning meaning) {
    if (meaning == meaning_) return;
    meaning_ = meaning;
    if (figures_)
        if (auto same = withMeaning(figures_, meaning)) figures_ = std::move(*same);
    evaluate();
}

Result<void> DraftSession::apply(const Edit& edit) {
    if (readOnly_ || changesNothing(edit)) return {};
    auto after = applied(document_, edit);
    if (!after) return fail(after.error());
    push(edit, std::move(*after));
    // Merged steps leave the stack's index as it was, and it says nothing then.
    emit journalGrew();
    return {};
}

Result<void> DraftSession::apply(const Edit& edit, const Closure& brought) {
    for (const TableFood& food : brought.foods)
        if (closure_.food(food.row) == nullptr) {
            closure_.foods.push_back(food);
            newFoods_.push_back(food);
        }
    for (const auto& [reference, document] : brought.recipes)
        closure_.recipes.try_emplace(reference, document);
    return apply(edit);
}

Result<void> DraftSession::apply(const Edit& edit, const TableFood& food) {
    Closure brought;
    brought.foods.push_back(food);
    return apply(edit, brought);
}

Result<void> DraftSession::retype(const Edit& edit, Json before) {
    if (readOnly_) return {};
    auto after = applied(std::move(before), edit);
    if (!after) return fail(after.error());
    push(edit, std::move(*after), true);
    emit journalGrew();
    return {};
}

void DraftSession::endTyping() {
    ++typing_;
}

std::optional<JournalChange> DraftSession::takeJournalChange() {
    const auto count = static_cast<std::size_t>(stack_.count());
    const auto cursor = static_cast<std::size_t>(stack_.index());
    if (toldEdits_ == count && journalEdits_ == count && toldCursor_ == cursor) return {};
    JournalChange change;
    change.keptEdits = toldEdits_;
    for (std::size_t i = toldEdits_; i < count; ++i) {
        const auto* command = static_cast<const EditCommand*>(stack_.command(static_cast<int>(i)));
        change.edits.push_back(command->edit());
    }
    change.cursor = toldCursor_ = cursor;
    toldEdits_ = journalEdits_ = count;
    return change;
}

void DraftSession::journalNotWritten() {
    toldEdits_ = 0;
    journalEdits_ = std::numeric_limits<std::size_t>::max();
}

std::vector<TableFood> DraftSession::takeNewFoods() {
    return std::exchange(newFoods_, {});
}

void DraftSession::keptAs(int revision) {
    endTyping();
    baseRevision_ = revision;
    emit baseRevisionChanged();
}

}  // namespace nettare
