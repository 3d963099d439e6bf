#include "app/support/quiet_start.h"

#include <QString>

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

void dropRuntimeFolderWarning(QtMsgType type, const QMessageLogContext& context,
                              const QString& text) {
    if (text.startsWith(QLatin1String{"QStandardPaths: XDG_RUNTIME_DIR not set"})) return;
    if (handlerBefore() != nullptr) handlerBefore()(type, context, text);
}

}  // namespace

QuietStart::QuietStart() {
    handlerBefore() = qInstallMessageHandler(&dropRuntimeFolderWarning);
}

QuietStart::~QuietStart() {
    qInstallMessageHandler(handlerBefore());
}

}  // namespace nettare
