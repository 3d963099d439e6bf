#pragma once

#include <QObject>

#include <memory>
#include <string>

#include "app/session/kitchen_session.h"
#include "app/start/window_start.h"
#include "app/theme/theme.h"
#include "app/widgets/wheel_guard.h"
#include "app/window/main_window.h"

namespace nettare {

/// The program while its window is open: its look, the open kitchen and the window on it.
class Workbench : public QObject {
    Q_OBJECT

public:
    Workbench();
    ~Workbench() override;

    /// Opens what is asked for; the last kitchen, or else the sample, where nothing is. Fails as
    /// Kitchen::open() and openSample() do; a last kitchen that is gone opens the sample and says
    /// so in the window.
    [[nodiscard]] Result<void> start(const WindowStart& start);

private:
    Result<void> open(const QString& path);
    Result<void> openTheSample(const QString& message);
    void show(Kitchen kitchen, bool sample);

    Theme theme_;
    WheelGuard wheel_;
    std::unique_ptr<KitchenSession> kitchen_;
    std::unique_ptr<MainWindow> window_;
};

}  // namespace nettare
