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

QString DialogPathAsker::foodTable(QWidget* window, bool folder) {
    const QString title = PathWords::tr("Bring in a table");
    if (folder) return QFileDialog::getExistingDirectory(window, title);
    return QFileDialog::getOpenFileName(
        window, title, {},
        PathWords::tr("Tables of foods (*.zip *.csv *.txt *.tsv);;All files (*)"));
}

QString DialogPathAsker::mappingFile(QWidget* window, bool write) {
    const QString filter = PathWords::tr("Mappings of columns (*.json)");
    if (!write)
        return QFileDialog::getOpenFileName(window, PathWords::tr("Use a mapping"), {}, filter);
    QString path = QFileDialog::getSaveFileName(window, PathWords::tr("Save this mapping"),
                                                PathWords::tr("columns.json"), filter);
    if (!path.isEmpty() && !path.endsWith(QStringLiteral(".json"))) path += QStringLiteral(".json");
    return path;
}

QString DialogPathAsker::photograph(QWidget* window) {
    return QFileDialog::getOpenFileName(window, PathWords::tr("Photograph of the package"), {},
                                        PathWords::tr("Photographs (*.jpg *.jpeg *.png)"));
}

QString DialogPathAsker::ledgerCsv(QWidget* window, const QString& suggestedName) {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    QString path = QFileDialog::getSaveFileName(window, PathWords::tr("Save the ledger"),
                                                QDir{folder}.filePath(suggestedName),
                                                PathWords::tr("Tables (*.csv)"));
    if (!path.isEmpty() && !path.endsWith(QStringLiteral(".csv"))) path += QStringLiteral(".csv");
    return path;
}

bool DialogPathAsker::printer(QWidget* window, QPrinter& printer) {
    return askForPrinterByDialog(window, printer);
}

}  // namespace nettare
