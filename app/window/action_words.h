#pragma once

class QAction;
class QString;

namespace nettare {

/// What a command is called, without the marks of its mnemonic: "Undo reading of oil & lemon".
[[nodiscard]] QString actionWords(const QAction& action);

}  // namespace nettare
