#pragma once

#include <QUndoCommand>

#include <functional>
#include <optional>

#include "core/edit/edit.h"

namespace nettare {

/// Any edit of a draft as a step of undo. Steps of one stretch of typing merge into one.
class EditCommand : public QUndoCommand {
public:
    /// What puts a document in the place of the draft's.
    struct Draft {
        std::function<const Json&()> document;
        std::function<void(Json)> changeTo;
    };

    /// How the command meets the one before it in the stack.
    enum class Place { Next, InItsStead };

    /// `after` is the document after the edit, which the first redo() takes as it is. InItsStead,
    /// the edit is that of the document before the last step, and the two become one.
    EditCommand(Draft draft, Edit edit, Json after, int typing, Place place = Place::Next);

    void redo() override;
    void undo() override;
    [[nodiscard]] int id() const override { return 1; }
    /// Only for the same member in the same stretch of typing. A step that came back to where it
    /// began goes.
    bool mergeWith(const QUndoCommand* other) override;

    [[nodiscard]] const Edit& edit() const { return edit_; }

private:
    void change(const Edit& edit);

    Draft draft_;
    Edit edit_;
    std::optional<Json> after_;
    int typing_;
    Place place_;
};

/// What undo calls the edit: "change of amount: olive oil".
[[nodiscard]] QString undoText(const Edit& edit);

}  // namespace nettare
