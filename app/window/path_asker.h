#pragma once

#include <QString>

class QPrinter;
class QWidget;

namespace nettare {

/// Asks the cook for a file. Behind one interface, so that a test can answer.
class PathAsker {
public:
    virtual ~PathAsker() = default;

    /// An existing kitchen; empty where the cook changed their mind.
    [[nodiscard]] virtual QString kitchenToOpen(QWidget* window) = 0;
    /// A file that does not exist yet, with the ending of kitchens.
    [[nodiscard]] virtual QString newKitchen(QWidget* window, const QString& title) = 0;
    /// Where a panel is to be written, with a name that is offered.
    [[nodiscard]] virtual QString panelPdf(QWidget* window, const QString& suggestedName) = 0;
    /// Files of a table of foods to bring in: a zip or a CSV, or the folder that holds them.
    [[nodiscard]] virtual QString foodTable(QWidget* window, bool folder) = 0;
    /// The mapping of a CSV's columns, to be read or to be written.
    [[nodiscard]] virtual QString mappingFile(QWidget* window, bool write) = 0;
    /// A photograph of a package.
    [[nodiscard]] virtual QString photograph(QWidget* window) = 0;
    /// Where a ledger is to be written as CSV, with a name that is offered.
    [[nodiscard]] virtual QString ledgerCsv(QWidget* window, const QString& suggestedName) = 0;
    /// Printer and paper of what is to be printed; false where the cook changed their mind.
    [[nodiscard]] virtual bool printer(QWidget* window, QPrinter& printer) = 0;
};

/// The file dialogs of the desktop.
class DialogPathAsker : public PathAsker {
public:
    [[nodiscard]] QString kitchenToOpen(QWidget* window) override;
    [[nodiscard]] QString newKitchen(QWidget* window, const QString& title) override;
    [[nodiscard]] QString panelPdf(QWidget* window, const QString& suggestedName) override;
    [[nodiscard]] QString foodTable(QWidget* window, bool folder) override;
    [[nodiscard]] QString mappingFile(QWidget* window, bool write) override;
    [[nodiscard]] QString photograph(QWidget* window) override;
    [[nodiscard]] QString ledgerCsv(QWidget* window, const QString& suggestedName) override;
    [[nodiscard]] bool printer(QWidget* window, QPrinter& printer) override;
};

}  // namespace nettare
