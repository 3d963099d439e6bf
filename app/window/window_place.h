#pragma once

class QWidget;

namespace nettare {

/// Puts a window where it last stood, or gives it the size for a first time.
void restorePlace(QWidget& window);
/// Remembers where it stands.
void rememberPlace(const QWidget& window);

}  // namespace nettare
