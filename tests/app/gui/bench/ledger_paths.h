#pragma once

#include <QPrinter>
#include <QTemporaryDir>

#include "app/window/path_asker.h"

namespace nettare {

/// Answers with files of one folder.
class LedgerPaths : public PathAsker {
public:
    explicit LedgerPaths(const QTemporaryDir& folder) : folder_{folder} {}

    [[nodiscard]] QString kitchenToOpen(QWidget*) override { return {}; }
    [[nodiscard]] QString newKitchen(QWidget*, const QString&) override { return {}; }
    [[nodiscard]] QString panelPdf(QWidget*, const QString&) override { return {}; }
    [[nodiscard]] QString foodTable(QWidget*, bool) override { return {}; }
    [[nodiscard]] QString mappingFile(QWidget*, bool) override { return {}; }
    [[nodiscard]] QString photograph(QWidget*) override { return {}; }
    [[nodiscard]] QString ledgerCsv(QWidget*, const QString& name) override {
        return folder_.filePath(name);
    }
    [[nodiscard]] bool printer(QWidget*, QPrinter& printer) override {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(folder_.filePath(QStringLiteral("ledger.pdf")));
        return true;
    }

private:
    const QTemporaryDir& folder_;
};

}  // namespace nettare
