#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <memory>
#include <optional>

#include "app/session/evaluation.h"
#include "core/edit/edit.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// How far the journal is.
enum class SaveState { Saved, Pending, ReadOnly, Failed };

/// The draft that a window works on: its document, its undo stack and its figures. All screens read
/// from here and hand their edits to apply(). Lives in the GUI thread and never waits for the disk.
class DraftSession : public QObject {
    Q_OBJECT

public:
    DraftSession(QString recipe, const StoredDraft& draft, Closure closure, bool readOnly,
                 QObject* parent = nullptr);
    ~DraftSession() override;

    [[nodiscard]] const QString& recipe() const { return recipe_; }
    [[nodiscard]] const Json& document() const { return document_; }
    [[nodiscard]] std::optional<int> baseRevision() const { return baseRevision_; }
    [[nodiscard]] bool readOnly() const { return readOnly_; }
    /// The newest figures there are; they are those of document() unless failure() says why not.
    [[nodiscard]] const std::shared_ptr<const Evaluation>& evaluation() const { return figures_; }
    /// Why the document as it stands has no figures, with a pointer to the place.
    [[nodiscard]] const std::optional<Error>& failure() const { return failure_; }
    /// What the figures are of; a way of looking at them and no part of the document.
    [[nodiscard]] Meaning meaning() const { return meaning_; }
    /// Figures follow before it returns.
    void setMeaning(Meaning meaning);
    [[nodiscard]] QUndoStack& undoStack() { return stack_; }
    [[nodiscard]] const Closure& closure() const { return closure_; }

    /// Does an edit, undoably; figures follow before it returns. Edits of one member in a row merge
    /// until endTyping(). What changes nothing is dropped. Fails: EditDoesNotFit.
    Result<void> apply(const Edit& edit);
    /// The same for an edit that brings rows or kept recipes which the closure may not hold yet.
    Result<void> apply(const Edit& edit, const Closure& brought);
    Result<void> apply(const Edit& edit, const TableFood& food);
    /// Does an edit of the document `before` the last step, in that step's stead: what was typed
    /// first gives way to what is typed now. Fails: EditDoesNotFit.
    Result<void> retype(const Edit& edit, Json before);
    /// The next edit begins an undo step of its own: the field was left.
    void endTyping();

    /// What the journal has to be told, nothing where it knows all; it is taken as told.
    [[nodiscard]] std::optional<JournalChange> takeJournalChange();
    /// The journal did not take the last change: the next one tells everything anew.
    void journalNotWritten();
    /// Rows that the kitchen may not have yet; taken as copied.
    [[nodiscard]] std::vector<TableFood> takeNewFoods();
    /// The draft was kept as that revision.
    void keptAs(int revision);

signals:
    void documentChanged();
    /// After every change, with or without new figures.
    void evaluationChanged();
    void baseRevisionChanged();
    /// takeJournalChange() has something to tell.
    void journalGrew();

private:
    void restore(const StoredDraft& draft);
    void push(const Edit& edit, Json after, bool inItsStead = false);
    void changeTo(Json document);
    void evaluate();

    QString recipe_;
    Json document_;
    std::optional<int> baseRevision_;
    Closure closure_;
    bool readOnly_ = false;
    QUndoStack stack_;
    int typing_ = 0;
    bool restoring_ = false;
    std::size_t toldEdits_ = 0;     ///< so many edits of the stack are in the journal as they are
    std::size_t journalEdits_ = 0;  ///< so many the journal has
    std::size_t toldCursor_ = 0;
    std::vector<TableFood> newFoods_;
    std::shared_ptr<const Evaluation> figures_;
    std::optional<Error> failure_;
    Meaning meaning_ = Meaning::ThisBatch;
};

}  // namespace nettare
