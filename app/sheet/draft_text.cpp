#include "app/sheet/draft_text.h"

#include <QContextMenuEvent>
#include <QMenu>
#include <QMimeData>
#include <QStyle>
#include <QTextDocument>

#include <cmath>
#include <memory>

#include "app/sheet/field_undo.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

constexpr int kTextPad = 3;

}  // namespace

DraftText::DraftText(const QString& name, DraftMember member, QWidget* parent)
    : QPlainTextEdit{parent}, member_{std::move(member)} {
    setAccessibleName(name);
    setProperty("refused", false);
    setUndoRedoEnabled(false);
    setTabChangesFocus(true);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    document()->setDocumentMargin(kTextPad);
    setStyleSheet(
        QStringLiteral("QPlainTextEdit { padding: 0; border-width: 2px; }"
                       "QPlainTextEdit[refused=\"false\"]:!focus:!hover {"
                       " border: 2px solid transparent; background: transparent; }"));
    connect(this, &QPlainTextEdit::textChanged, this, [this] {
        if (!writing_) typed();
        fit();
    });
}

void DraftText::setDraft(DraftSession* draft) {
    if (member_.draft() != nullptr) member_.draft()->disconnect(this);
    member_.setDraft(draft);
    if (draft != nullptr)
        connect(draft, &DraftSession::evaluationChanged, this, &DraftText::follow);
    setReadOnly(draft == nullptr || draft->readOnly());
    follow();
}

void DraftText::typed() {
    member_.type(toPlainText());
    showRefusal();
}

void DraftText::follow() {
    if (member_.isTyping()) return;
    member_.forget();
    const QString shown = member_.shown();
    if (shown != toPlainText()) {
        writing_ = true;
        setPlainText(shown);
        moveCursor(QTextCursor::End);
        writing_ = false;
    }
    showRefusal();
}

void DraftText::showRefusal() {
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

int DraftText::heightForText() const {
    // Documents of plain text count their height in lines.
    const auto lines = std::max(1, static_cast<int>(std::lround(document()->size().height())));
    return lines * fontMetrics().lineSpacing() + 2 * (kTextPad + kFocusRingPx);
}

void DraftText::fit() {
    const int wanted = heightForText();
    if (height() != wanted) setFixedHeight(wanted);
}

QSize DraftText::sizeHint() const {
    return {QPlainTextEdit::sizeHint().width(), heightForText()};
}

QSize DraftText::minimumSizeHint() const {
    return {60, heightForText()};
}

void DraftText::resizeEvent(QResizeEvent* event) {
    QPlainTextEdit::resizeEvent(event);
    fit();
}

bool DraftText::event(QEvent* event) {
    if (isUndoOverride(*event) && !member_.refusal()) {
        event->ignore();
        return false;
    }
    return QPlainTextEdit::event(event);
}

void DraftText::keyPressEvent(QKeyEvent* event) {
    const bool takesBack = event->matches(QKeySequence::Undo) || event->key() == Qt::Key_Escape;
    if (takesBack && (member_.refusal() || event->key() == Qt::Key_Escape)) {
        member_.takeBack();
        follow();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        member_.leave();
        if (!member_.refusal()) follow();
        emit enterPressed();
    } else if (event->key() == Qt::Key_Backspace && toPlainText().isEmpty()) {
        emit emptied();
    } else {
        QPlainTextEdit::keyPressEvent(event);
    }
}

void DraftText::focusOutEvent(QFocusEvent* event) {
    QPlainTextEdit::focusOutEvent(event);
    member_.leave();
    if (!member_.refusal()) follow();
}

void DraftText::contextMenuEvent(QContextMenuEvent* event) {
    const std::unique_ptr<QMenu> menu{createStandardContextMenu()};
    dropFieldUndo(*menu);
    menu->exec(event->globalPos());
}

void DraftText::insertFromMimeData(const QMimeData* source) {
    insertPlainText(source->text().simplified());
}

}  // namespace nettare
