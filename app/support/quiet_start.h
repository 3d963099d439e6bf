#pragma once

#include <QtGlobal>

namespace nettare {

/// While it lives, Qt's warning about a missing XDG_RUNTIME_DIR is dropped: Qt looks for a Wayland
/// socket even when told to need none, and scripts and build machines have no such folder. All else
/// goes to the handler before. One at a time, around the making of an application.
class QuietStart {
public:
    QuietStart();
    ~QuietStart();
    QuietStart(const QuietStart&) = delete;
    QuietStart& operator=(const QuietStart&) = delete;
};

}  // namespace nettare
