#include <QByteArray>
#include <QString>
#include <QtGlobal>

#include <cstdio>
#include <cstdlib>

namespace {

/// Ends the test case, which Catch2 reports by its name.
void failOnWarning(QtMsgType type, const QMessageLogContext&, const QString& text) {
    std::fputs(text.toUtf8().constData(), stderr);
    std::fputc('\n', stderr);
    if (type != QtDebugMsg && type != QtInfoMsg) std::abort();
}

[[maybe_unused]] const QtMessageHandler kHandlerBefore = qInstallMessageHandler(&failOnWarning);

}  // namespace
