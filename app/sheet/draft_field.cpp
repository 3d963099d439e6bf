#include "app/sheet/draft_field.h"

#include <QContextMenuEvent>
#include <QMenu>
#include <QStyle>

#include <memory>

#include "app/sheet/field_undo.h"

namespace nettare {

namespace {

/// Border, padding and the room that a line edit keeps, on both sides, and for the cursor.
constexpr int kTextInset = 2 * 6 + 2;

}  // namespace

DraftField::DraftField(const QString& name, DraftMember member, QWidget* parent)
    : QLineEdit{parent}, member_{std::move(member)} {
    setAccessibleName(name);
    setProperty("refused", false);
    connect(this, &QLineEdit::textEdited, this, &DraftField::typed);
    connect(this, &QLineEdit::textChanged, this, &QWidget::updateGeometry);
}

void DraftField::setDraft(DraftSession* draft) {
    if (member_.draft() != nullptr) member_.draft()->disconnect(this);
    member_.setDraft(draft);
    if (draft != nullptr)
        connect(draft, &DraftSession::evaluationChanged, this, &DraftField::follow);
    setReadOnly(draft == nullptr || draft->readOnly());
    follow();
}

void DraftField::setAsText(bool asText) {
    asText_ = asText;
    setStyleSheet(asText ? QStringLiteral("QLineEdit { padding: 0 2px; border-width: 2px;"
                                          " min-height: 22px; }"
                                          "QLineEdit[refused=\"false\"]:!focus:!hover {"
                                          " border: 2px solid transparent;"
                                          " background: transparent; }")
                         : QString{});
}

QSize DraftField::sizeHint() const {
    if (!asText_) return QLineEdit::sizeHint();
    const QString shown = text().isEmpty() ? placeholderText() : text();
    return {fontMetrics().horizontalAdvance(shown) + kTextInset, QLineEdit::sizeHint().height()};
}

QSize DraftField::minimumSizeHint() const {
    return asText_ ? sizeHint() : QLineEdit::minimumSizeHint();
}

void DraftField::typed(const QString& text) {
    member_.type(text);
    showRefusal();
}

// Own typing is not written back: "1." would lose its point before the next digit comes.
void DraftField::follow() {
    if (member_.isTyping()) return;
    member_.forget();
    const QString shown = member_.shown();
    if (shown != text()) setText(shown);
    showRefusal();
}

void DraftField::takeBack() {
    member_.takeBack();
    follow();
}

void DraftField::showRefusal() {
    const QString sentence = member_.complaint();
    if (property("refused").toBool() == sentence.isEmpty()) {
        setProperty("refused", !sentence.isEmpty());
        style()->unpolish(this);
        style()->polish(this);
    }
    if (sentence == accessibleDescription()) return;
    setAccessibleDescription(sentence);
    emit refused(sentence);
}

bool DraftField::event(QEvent* event) {
    // A refused text is no part of the draft: the field takes it back by itself.
    if (isUndoOverride(*event) && !member_.refusal()) {
        event->ignore();
        return false;
    }
    return QLineEdit::event(event);
}

void DraftField::keyPressEvent(QKeyEvent* event) {
    const bool takesBack = event->matches(QKeySequence::Undo) || event->key() == Qt::Key_Escape;
    if (takesBack && (member_.refusal() || event->key() == Qt::Key_Escape)) {
        takeBack();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        member_.leave();
        if (!member_.refusal()) follow();
        selectAll();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void DraftField::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    member_.leave();
    if (!member_.refusal()) follow();
}

void DraftField::contextMenuEvent(QContextMenuEvent* event) {
    const std::unique_ptr<QMenu> menu{createStandardContextMenu()};
    dropFieldUndo(*menu);
    menu->exec(event->globalPos());
}

}  // namespace nettare
