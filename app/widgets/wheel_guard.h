#pragma once

#include <QObject>

namespace nettare {

/// Keeps the wheel from editing what has no focus: a field that the pointer happens to cross lets
/// the scroll area behind it scroll. Watches the whole program while it lives.
class WheelGuard : public QObject {
    Q_OBJECT

public:
    explicit WheelGuard(QObject* parent = nullptr);

    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace nettare
