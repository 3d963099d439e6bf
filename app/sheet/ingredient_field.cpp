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

DraftMember preparationMember(const std::string& line) {
    return {[line](const DraftSession& draft) {
                const auto row = lineRowOf(&draft, line);
                return row ? row->preparation : QString{};
            },
            [line](const Json& document, const std::string& typed) -> Result<Edit> {
                auto edit = setPreparation(document, line, typed);
                if (!edit) return fail(edit.error());
                return std::move(edit->edit);
            }};
}

}  // namespace

IngredientField::IngredientField(KitchenSession& kitchen, std::string line, QWidget* parent)
    : QLineEdit{parent},
      kitchen_{kitchen},
      line_{std::move(line)},
      preparation_{preparationMember(line_)},
      completer_{new FoodCompleter{kitchen, *this, [this](const QString& text) {
                                       const QString food = splitIngredient(text, name_).food;
                                       return food == name_ ? QString{} : food;
                                   }}} {
    setProperty("refused", false);
    preparation_.setDraft(kitchen.draft());
    connect(this, &QLineEdit::textEdited, this, &IngredientField::typed);
    connect(completer_, &FoodCompleter::chosen, this, &IngredientField::choose);
    connect(kitchen.draft(), &DraftSession::evaluationChanged, this, [this] {
        if (!preparation_.isTyping()) follow();
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

void IngredientField::typePreparation(const QString& preparation) {
    preparation_.type(preparation);
    refuse(preparation_.complaint());
}

void IngredientField::takeBack() {
    preparation_.takeBack();
    follow();
}

void IngredientField::choose(const FoodOffer& offer) {
    DraftSession* draft = kitchen_.draft();
    if (draft == nullptr) return;
    const QString preparation = splitIngredient(text(), name_).preparation;
    const auto edit = setLineFood(draft->document(), line_, offer.choice);
    if (!edit) return refuse(draftSentence(draft->document(), edit.error()));
    draft->endTyping();
    applyOffer(kitchen_, edit->edit, offer,
               [guard = QPointer<IngredientField>{this}, preparation](const Result<void>& done) {
                   if (guard) guard->chose(preparation, done);
               });
}

void IngredientField::chose(const QString& preparation, const Result<void>& done) {
    if (!done) return refuse(draftSentence(kitchen_.draft()->document(), done.error()));
    preparation_.leave();
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
    preparation_.leave();
    if (!isOpenQuestion()) return;
    const auto best = completer_->best();
    if (best)
        choose(*best);
    else
        refuse(tr("No food is called “%1”; the line keeps %2. Type another name and choose from "
                  "the list, or read its label in the pantry.")
                   .arg(splitIngredient(text(), name_).food, name_));
}

void IngredientField::contextMenuEvent(QContextMenuEvent* event) {
    const std::unique_ptr<QMenu> menu{createStandardContextMenu()};
    dropFieldUndo(*menu);
    menu->exec(event->globalPos());
}

}  // namespace nettare
