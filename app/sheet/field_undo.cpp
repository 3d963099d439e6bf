#include "app/sheet/field_undo.h"

#include <QKeyEvent>
#include <QMenu>

namespace nettare {

bool isUndoOverride(const QEvent& event) {
    if (event.type() != QEvent::ShortcutOverride) return false;
    const auto& key = static_cast<const QKeyEvent&>(event);
    return key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo);
}

void dropFieldUndo(QMenu& menu) {
    // Qt names the standard entries of text menus.
    for (QAction* action : menu.actions())
        if (action->objectName() == QLatin1String{"edit-undo"} ||
            action->objectName() == QLatin1String{"edit-redo"})
            menu.removeAction(action);
    if (!menu.isEmpty() && menu.actions().constFirst()->isSeparator())
        menu.removeAction(menu.actions().constFirst());
}

}  // namespace nettare
