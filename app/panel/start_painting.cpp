#include "app/panel/start_painting.h"

#include <QByteArray>
#include <QGuiApplication>

#include <array>

#ifdef __SANITIZE_ADDRESS__
// Fontconfig holds its memory by offsets, which the leak checker does not follow.
extern "C" const char* __lsan_default_suppressions() {
    return "leak:libfontconfig\n";
}
extern "C" const char* __lsan_default_options() {
    return "print_suppressions=0";
}
#endif

namespace nettare {

namespace {

QtMessageHandler& handlerBefore() {
    static QtMessageHandler handler = nullptr;
    return handler;
}

/// Qt looks for a Wayland socket even when told to need none, and warns where a script or a build
/// machine has no XDG_RUNTIME_DIR. That warning is dropped; all else goes on.
void dropRuntimeFolderWarning(QtMsgType type, const QMessageLogContext& context,
                              const QString& text) {
    if (text.startsWith(QLatin1String{"QStandardPaths: XDG_RUNTIME_DIR not set"})) return;
    if (handlerBefore() != nullptr) handlerBefore()(type, context, text);
}

QGuiApplication* offscreenApplication() {
    static std::array<char, 8> program{"nettare"};
    static std::array<char, 10> option{"-platform"};
    static std::array<char, 10> platform{"offscreen"};
    static std::array<char*, 4> words{program.data(), option.data(), platform.data(), nullptr};
    static int count = 3;
    handlerBefore() = qInstallMessageHandler(&dropRuntimeFolderWarning);
    // Never destroyed: its destructor needs statics of Qt that are gone when ours go.
    auto* const application = new QGuiApplication{count, words.data()};
    qInstallMessageHandler(handlerBefore());
    return application;
}

}  // namespace

void startPainting() {
    if (QCoreApplication::instance() != nullptr) return;
    [[maybe_unused]] static const QGuiApplication* const kApplication = offscreenApplication();
}

}  // namespace nettare
