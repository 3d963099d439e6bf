#include "app/sheet/ingredient_field.h"

#include <QContextMenuEvent>
#include <QMenu>
#include <QStyle>

#include <algorithm>
#include <memory>

#include "app/session/kitchen_session.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/field_undo.h"
#include "app/sheet/line_rows.h"
#include "app/sheet/line_text.h"

namespace nettare {

namespace {

std::optional<LineRow> lineRowOf(const DraftSession* draft, const std::string& line) {
    if (draft == nullptr) return {};
    std::vector<LineRow> rows = lineRows(*draft);
    const auto found = std::ranges::find(rows, line, &LineRow::id);
    return found == rows.end() ? std::nullopt : std::optional{std::move(*found)};
}

}  // namespace

IngredientField::IngredientField(KitchenSession& kitchen, std::string line, QWidget* parent)
    : QLineEdit{parent},
      kitchen_{kitchen},
      line_{std::move(line)},
      completer_{new FoodCompleter{kitchen, *this, [this](const QString& text) {
                                       const QString food = splitIngredient(text, name_).food;
                                       return food == name_ ? QString{} : food;
                                   }}} {
    setProperty("refused", false);
    connect(this, &QLineEdit::textEdited, this, &IngredientField::typed);
    connect(completer_, &FoodCompleter::chosen, this, &IngredientField::choose);
    connect(kitchen.draft(), &DraftSession::evaluationChanged, this, [this] {
        if (!typing_) follow();
    });
    follow();
    setAccessibleName(tr("Ingredient %1").arg(name_));
}

QString IngredientField::shown() const {
    const auto row = lineRowOf(kitchen_.draft(), line_);
    return row ? ingredientText(row->food, row->preparation) : QString{};
}

void IngredientField::follow() {
    const auto row = lineRowOf(kitchen_.draft(), line_);
    if (!row) return;
    name_ = row->food;
    const QString text = ingredientText(row->food, row->preparation);
    if (text != this->text()) setText(text);
    refuse({});
}

bool IngredientField::isOpenQuestion() const {
    return splitIngredient(text(), name_).food != name_;
}

void IngredientField::typed(const QString& text) {
    const IngredientText parts = splitIngredient(text, name_);
    refuse({});
    if (parts.food == name_) typePreparation(parts.preparation);
}

// As DraftMember does: what is typed takes the place of what was typed before in the same stay.
void IngredientField::typePreparation(const QString& preparation) {
    DraftSession* draft = kitchen_.draft();
    if (draft == nullptr) return;
    typing_ = true;
    if (step_ > 0 && draft->undoStack().index() == step_) draft->undoStack().undo();
    step_ = 0;
    const auto edit = setPreparation(draft->document(), line_, preparation.toStdString());
    if (!edit) {
        refuse(draftSentence(draft->document(), edit.error()));
    } else if (draft->apply(edit->edit) && !changesNothing(edit->edit)) {
        step_ = draft->undoStack().index();
    }
    typing_ = false;
}

void IngredientField::takeBack() {
    DraftSession* draft = kitchen_.draft();
    if (draft != nullptr && step_ > 0 && draft->undoStack().index() == step_)
        draft->undoStack().undo();
    step_ = 0;
    follow();
}

void IngredientField::choose(const FoodOffer& offer) {
    DraftSession* draft = kitchen_.draft();
    if (draft == nullptr) return;
    const QString preparation = splitIngredient(text(), name_).preparation;
    const auto edit = setLineFood(draft->document(), line_, offer.choice);
    if (!edit) return refuse(draftSentence(draft->document(), edit.error()));
    draft->endTyping();
    const auto food = broughtBy(kitchen_, offer);
    const auto done = food ? draft->apply(edit->edit, *food) : draft->apply(edit->edit);
    if (!done) return refuse(draftSentence(draft->document(), done.error()));
    draft->endTyping();
    follow();
    typePreparation(preparation);
    setText(shown());
}

void IngredientField::refuse(const QString& sentence) {
    if (property("refused").toBool() != !sentence.isEmpty()) {
        setProperty("refused", !sentence.isEmpty());
        style()->unpolish(this);
        style()->polish(this);
    }
    setAccessibleDescription(sentence);
    emit refused(sentence);
}

bool IngredientField::event(QEvent* event) {
    if (isUndoOverride(*event) && !isOpenQuestion()) {
        event->ignore();
        return false;
    }
    return QLineEdit::event(event);
}

void IngredientField::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && completer_->isOpen()) return event->ignore();
    if (event->matches(QKeySequence::Undo) && isOpenQuestion()) {
        completer_->close();
        return follow();
    }
    QLineEdit::keyPressEvent(event);
}

// The text that names no food is not kept in silence: the message says what became of it.
void IngredientField::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    if (event->reason() == Qt::PopupFocusReason || completer_->isOpen()) return;
    if (kitchen_.draft() != nullptr) kitchen_.draft()->endTyping();
    if (!isOpenQuestion()) return;
    const auto best = completer_->best();
    if (best)
        choose(*best);
    else
        refuse(tr("No food is called “%1”; the line keeps %2. Type another name and choose from "
                  "the list.")
                   .arg(splitIngredient(text(), name_).food, name_));
}

void IngredientField::contextMenuEvent(QContextMenuEvent* event) {
    const std::unique_ptr<QMenu> menu{createStandardContextMenu()};
    dropFieldUndo(*menu);
    menu->exec(event->globalPos());
}

}  // namespace nettare
