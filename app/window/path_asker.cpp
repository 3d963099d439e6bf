#include "app/window/path_asker.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QStandardPaths>

#include "app/panel_screen/ask_for_pdf.h"
#include "app/path/ask_for_printer.h"

namespace nettare {

namespace {

struct PathWords {
    Q_DECLARE_TR_FUNCTIONS(PathAsker)
};

QString kitchenFilter() {
    return PathWords::tr("Kitchens (*.nettare)");
}

}  // namespace

QString DialogPathAsker::kitchenToOpen(QWidget* window) {
    return QFileDialog::getOpenFileName(window, PathWords::tr("Open kitchen"), {}, kitchenFilter());
}

QString DialogPathAsker::newKitchen(QWidget* window, const QString& title) {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString offered = QDir{folder}.filePath(PathWords::tr("kitchen.nettare"));
    QString path = QFileDialog::getSaveFileName(window, title, offered, kitchenFilter());
    const QString ending = QStringLiteral(".nettare");
    if (!path.isEmpty() && !path.endsWith(ending)) path += ending;
    return path;
}

QString DialogPathAsker::panelPdf(QWidget* window, const QString& suggestedName) {
    return askForPdfByDialog(window, suggestedName);
}

bool DialogPathAsker::printer(QWidget* window, QPrinter& printer) {
    return askForPrinterByDialog(window, printer);
}

}  // namespace nettare
