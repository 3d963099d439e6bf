#include "app/start/run_window.h"

#include <QApplication>
#include <QIcon>

#include <iostream>
#include <optional>

#include "app/start/workbench.h"
#include "app/support/quiet_start.h"
#include "app/words/error_sentence.h"

namespace nettare {

namespace {

/// Qt ends the program without a sentence of ours where it finds no display.
bool hasDisplay() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

}  // namespace

int runWindow(int argc, char** argv, const WindowStart& start) {
    if (!hasDisplay()) {
        std::cerr
            << "nettare: there is no display to open the workbench on; “nettare --help” lists "
               "the commands that need none.\n";
        return 1;
    }
    std::optional<QuietStart> quiet{std::in_place};
    const QApplication application{argc, argv};
    quiet.reset();
    QApplication::setApplicationName(QStringLiteral("nettare"));
    QApplication::setApplicationDisplayName(QStringLiteral("Nettare"));
    QGuiApplication::setDesktopFileName(QStringLiteral("nettare"));
    Workbench workbench;
    if (const auto started = workbench.start(start); !started) {
        std::cerr << "nettare: " << errorSentence(started.error()) << '\n';
        return 1;
    }
    return QApplication::exec();
}

}  // namespace nettare
