#include "app/sheet/entry_line.h"

#include <QKeyEvent>
#include <QStyle>

namespace nettare {

EntryLine::EntryLine(const QString& name, const QString& prompt, QWidget* parent)
    : QLineEdit{parent} {
    setAccessibleName(name);
    setPlaceholderText(prompt);
    setProperty("refused", false);
    setStyleSheet(
        QStringLiteral("QLineEdit { padding: 0 8px; border-width: 2px; }"
                       "QLineEdit[refused=\"false\"]:!focus {"
                       " border: 2px solid transparent; background: transparent; }"));
}

void EntryLine::setRefused(bool refused) {
    if (property("refused").toBool() == refused) return;
    setProperty("refused", refused);
    style()->unpolish(this);
    style()->polish(this);
}

void EntryLine::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if ((enter || event->key() == Qt::Key_Escape) && listIsOpen_ && listIsOpen_()) {
        event->ignore();
    } else if (enter) {
        if (!text().trimmed().isEmpty()) emit entered(text().simplified());
    } else if (event->key() == Qt::Key_Escape && !text().isEmpty()) {
        clear();
        setRefused(false);
    } else {
        QLineEdit::keyPressEvent(event);
    }
}

}  // namespace nettare
