#include "app/window/keep_bar.h"

#include <QApplication>
#include <QKeyEvent>

#include "app/session/kitchen_session.h"
#include "app/sheet/draft_sentence.h"
#include "app/window/saved_text.h"

namespace nettare {

KeepBar::KeepBar(KitchenSession& kitchen, QWidget* parent)
    : InlineBar{Role::Selection, Role::Cobalt, parent}, kitchen_{kitchen}, note_{new QLineEdit} {
    note_->setObjectName(QStringLiteral("revisionNote"));
    note_->setMaxLength(500);
    note_->setPlaceholderText(tr("What changed, for whoever reads this in ten years"));
    addField(note_);
    QPushButton* keep = addButton(tr("Keep"));
    keep->setProperty("primary", true);
    QPushButton* cancel = addButton(tr("Cancel"));
    connect(keep, &QPushButton::clicked, this, &KeepBar::keep);
    connect(cancel, &QPushButton::clicked, this, &KeepBar::leave);
    connect(note_, &QLineEdit::returnPressed, this, &KeepBar::keep);
    connect(&kitchen_, &KitchenSession::draftOpened, this, &QWidget::hide);
    hide();
}

void KeepBar::ask() {
    const DraftSession* draft = kitchen_.draft();
    if (draft == nullptr) return;
    if (draft->failure()) {
        emit refused(tr("This draft has no figures yet and cannot be kept: %1")
                         .arg(draftSentence(draft->document(), *draft->failure())));
        return;
    }
    const QString question = tr("Note for revision %1").arg(nextRevision(kitchen_));
    setText(question);
    note_->setAccessibleName(question);
    note_->clear();
    before_ = QApplication::focusWidget();
    show();
    note_->setFocus(Qt::ShortcutFocusReason);
}

void KeepBar::keep() {
    leave();
    kitchen_.keep(note_->text());
}

void KeepBar::leave() {
    if (before_ != nullptr && before_->isVisible()) before_->setFocus(Qt::OtherFocusReason);
    hide();
}

void KeepBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        InlineBar::keyPressEvent(event);
}

}  // namespace nettare
