#include "app/path/ask_for_printer.h"

#include <QCoreApplication>
#include <QPrintDialog>

namespace nettare {

namespace {

struct PrinterWords {
    Q_DECLARE_TR_FUNCTIONS(AskForPrinter)
};

}  // namespace

bool askForPrinterByDialog(QWidget* window, QPrinter& printer) {
    QPrintDialog dialog{&printer, window};
    dialog.setWindowTitle(PrinterWords::tr("Print"));
    return dialog.exec() == QDialog::Accepted;
}

}  // namespace nettare
