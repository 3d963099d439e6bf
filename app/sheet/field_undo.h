#pragma once

class QEvent;
class QMenu;

namespace nettare {

/// True for the shortcut override of undo or redo: a text field takes those for itself unless it is
/// kept from it, and would undo letters behind the draft's back.
[[nodiscard]] bool isUndoOverride(const QEvent& event);

/// Takes undo and redo out of a field's own menu, for the same reason.
void dropFieldUndo(QMenu& menu);

}  // namespace nettare
