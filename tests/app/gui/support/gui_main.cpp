#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include "app/support/quiet_start.h"
#include "app/theme/dress.h"

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <memory>

namespace {

/// A warning ends the test case, which Catch2 reports by its name.
void failOnQtWarning(QtMsgType type, const QMessageLogContext&, const QString& text) {
    // The offscreen platform says so for every window that has a least size.
    if (text == QLatin1String{"This plugin does not support propagateSizeHints()"}) return;
    // ... and for every list that opens below a field.
    if (text == QLatin1String{"This plugin does not support raise()"}) return;
    if (text == QLatin1String{"This plugin does not support grabbing the keyboard"}) return;
    std::fputs(text.toUtf8().constData(), stderr);
    std::fputc('\n', stderr);
    if (type != QtDebugMsg && type != QtInfoMsg) std::abort();
}

/// The desktop, the bus and the settings of whoever runs the tests stay out of them.
void leaveTheDesktop(const QTemporaryDir& settings) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    qunsetenv("DBUS_SESSION_BUS_ADDRESS");
    qunsetenv("XDG_RUNTIME_DIR");
    qunsetenv("QT_STYLE_OVERRIDE");
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
}

std::unique_ptr<QApplication> startedApplication() {
    static std::array<char, 9> program{"test_gui"};
    static std::array<char*, 2> words{program.data(), nullptr};
    static int count = 1;
    const nettare::QuietStart quiet;
    auto application = std::make_unique<QApplication>(count, words.data());
    QApplication::setCursorFlashTime(0);
    QApplication::setEffectEnabled(Qt::UI_AnimateMenu, false);
    QApplication::setEffectEnabled(Qt::UI_AnimateCombo, false);
    QApplication::setEffectEnabled(Qt::UI_AnimateTooltip, false);
    nettare::dress(*application, nettare::Shade::Light);
    return application;
}

}  // namespace

int main(int count, char** words) {
    qInstallMessageHandler(&failOnQtWarning);
    const QTemporaryDir settings;
    leaveTheDesktop(settings);
    const auto application = startedApplication();
    return Catch::Session().run(count, words);
}
