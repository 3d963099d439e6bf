#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTableWidget>

#include <optional>

#include "app/import_table/column_roles.h"

namespace nettare {

class ColumnModel;

/// How a CSV of foods is to be read: what the table is called, which column is what, and the first
/// ten rows as they are.
class MappingForm : public QWidget {
    Q_OBJECT

public:
    explicit MappingForm(QWidget* parent = nullptr);

    /// Reads the first rows and guesses; a file that cannot be read gives its error.
    [[nodiscard]] std::optional<Error> open(const std::string& path);
    void setMapping(const CsvMapping& mapping);
    [[nodiscard]] CsvMapping mapping() const;
    /// The first rows give way to what an import reports.
    void showRows(bool shown);

signals:
    void changed();

private:
    void build();
    void showPreview();
    void separatorChosen();

    std::string path_;
    CsvMapping mapping_;
    std::vector<std::vector<std::string>> preview_;
    QLineEdit *table_, *release_, *citation_;
    QComboBox *separator_, *decimal_;
    QCheckBox* zero_;
    ColumnModel* columns_;
    QTableView* columnsTable_;
    QTableWidget* rows_;
};

}  // namespace nettare
