#include "app/panel_screen/ask_for_pdf.h"

#include "app/theme/user_settings.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QStandardPaths>

namespace nettare {

namespace {

struct PdfDialog {
    Q_DECLARE_TR_FUNCTIONS(PdfDialog)
};

QString folderKey() {
    return QStringLiteral("panel/folder");
}

QString lastFolder() {
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return userSettings()->value(folderKey(), documents).toString();
}

}  // namespace

QString askForPdfByDialog(QWidget* parent, const QString& suggestedName) {
    QString path = QFileDialog::getSaveFileName(parent, PdfDialog::tr("Export panel as PDF"),
                                                QDir{lastFolder()}.filePath(suggestedName),
                                                PdfDialog::tr("PDF documents (*.pdf)"));
    if (path.isEmpty()) return path;
    if (QFileInfo{path}.suffix().isEmpty()) path += QStringLiteral(".pdf");
    userSettings()->setValue(folderKey(), QFileInfo{path}.absolutePath());
    return path;
}

}  // namespace nettare
