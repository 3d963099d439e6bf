#include "app/import_table/mapping_form.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

#include "app/import_table/choice_delegate.h"
#include "app/import_table/column_model.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

constexpr int kPreviewRows = 10;
constexpr int kLongestCell = 40;
constexpr std::array kSeparators{',', ';', '\t'};
constexpr std::array kDecimalSigns{'.', ','};

QLineEdit* namedField(const QString& name) {
    auto* field = new QLineEdit;
    field->setObjectName(name);
    return field;
}

template <std::size_t N>
int placeOf(const std::array<char, N>& signs, char sign) {
    return static_cast<int>(std::ranges::find(signs, sign) - signs.begin());
}

}  // namespace

MappingForm::MappingForm(QWidget* parent)
    : QWidget{parent},
      table_{namedField(QStringLiteral("tableName"))},
      release_{namedField(QStringLiteral("tableRelease"))},
      citation_{namedField(QStringLiteral("tableCitation"))},
      separator_{new QComboBox},
      decimal_{new QComboBox},
      zero_{new QCheckBox{tr("A &zero means no data")}},
      columns_{new ColumnModel{this}},
      columnsTable_{new QTableView},
      rows_{new QTableWidget} {
    build();
    for (QLineEdit* field : {table_, release_, citation_})
        connect(field, &QLineEdit::textEdited, this, &MappingForm::changed);
    connect(separator_, &QComboBox::activated, this, &MappingForm::separatorChosen);
    connect(decimal_, &QComboBox::activated, this, &MappingForm::changed);
    connect(zero_, &QCheckBox::toggled, this, &MappingForm::changed);
    connect(columns_, &ColumnModel::rolesChanged, this, &MappingForm::changed);
}

void MappingForm::build() {
    separator_->addItems({tr("comma"), tr("semicolon"), tr("tab")});
    separator_->setObjectName(QStringLiteral("separator"));
    decimal_->addItems({tr("point: 1.5"), tr("comma: 1,5")});
    decimal_->setObjectName(QStringLiteral("decimalSign"));
    zero_->setObjectName(QStringLiteral("zeroIsMissing"));
    table_->setPlaceholderText(tr("a short name, such as “market-2026”"));
    release_->setPlaceholderText(tr("a year or a number"));
    citation_->setPlaceholderText(tr("as its publisher asks to be cited"));

    auto* names = new QFormLayout;
    names->setHorizontalSpacing(kSpace3Px);
    names->setVerticalSpacing(kSpace2Px);
    names->addRow(tr("&Table"), table_);
    names->addRow(tr("&Release"), release_);
    names->addRow(tr("C&itation"), citation_);
    auto* signs = new QFormLayout;
    signs->setHorizontalSpacing(kSpace3Px);
    signs->setVerticalSpacing(kSpace2Px);
    signs->addRow(tr("Columns stand &between"), separator_);
    signs->addRow(tr("&Decimal sign"), decimal_);
    signs->addRow(QString{}, zero_);
    auto* head = new QHBoxLayout;
    head->setSpacing(kSpace6Px);
    head->addLayout(names, 2);
    head->addLayout(signs, 1);

    columnsTable_->setObjectName(QStringLiteral("columnRoles"));
    columnsTable_->setAccessibleName(tr("Columns of the file and what they are taken as"));
    columnsTable_->setModel(columns_);
    dressTable(*columnsTable_);
    columnsTable_->setItemDelegate(new ChoiceDelegate{columnsTable_});
    columnsTable_->setEditTriggers(QAbstractItemView::DoubleClicked |
                                   QAbstractItemView::SelectedClicked |
                                   QAbstractItemView::EditKeyPressed);
    QHeaderView* header = columnsTable_->horizontalHeader();
    header->setSectionResizeMode(QHeaderView::Stretch);
    header->setSectionResizeMode(ColumnModel::Unit, QHeaderView::ResizeToContents);

    rows_->setObjectName(QStringLiteral("previewRows"));
    rows_->setAccessibleName(tr("The first rows of the file"));
    rows_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    dressTable(*rows_);
    rows_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);

    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace3Px);
    column->addLayout(head);
    column->addWidget(columnsTable_, 3);
    column->addWidget(rows_, 2);
}

std::optional<Error> MappingForm::open(const std::string& path) {
    path_ = path;
    const auto guess = guessCsvMapping(path);
    if (!guess) return guess.error();
    setMapping(*guess);
    return std::nullopt;
}

void MappingForm::setMapping(const CsvMapping& mapping) {
    mapping_ = mapping;
    table_->setText(QString::fromStdString(mapping.table));
    release_->setText(QString::fromStdString(mapping.release));
    citation_->setText(QString::fromStdString(mapping.citation));
    separator_->setCurrentIndex(placeOf(kSeparators, mapping.separator));
    decimal_->setCurrentIndex(placeOf(kDecimalSigns, mapping.decimalSign));
    const QSignalBlocker quiet{zero_};
    zero_->setChecked(mapping.zeroIsMissing);
    showPreview();
    emit changed();
}

void MappingForm::showPreview() {
    auto preview = csvPreview(path_, mapping_.separator, kPreviewRows);
    preview_ = preview ? std::move(*preview) : std::vector<std::vector<std::string>>{};
    columns_->show(columnRoles(preview_, mapping_));
    rows_->clear();
    const int columns = preview_.empty() ? 0 : static_cast<int>(preview_.front().size());
    rows_->setColumnCount(columns);
    rows_->setRowCount(std::max(0, static_cast<int>(preview_.size()) - 1));
    for (std::size_t row = 0; row < preview_.size(); ++row)
        for (int column = 0; column < columns; ++column) {
            const auto& cells = preview_[row];
            const auto at = static_cast<std::size_t>(column);
            const QString text = at < cells.size()
                                     ? QString::fromStdString(cells[at]).left(kLongestCell)
                                     : QString{};
            auto* item = new QTableWidgetItem{text};
            if (row == 0)
                rows_->setHorizontalHeaderItem(column, item);
            else
                rows_->setItem(static_cast<int>(row) - 1, column, item);
        }
    rows_->resizeColumnsToContents();
}

// Other columns come out, so what they are taken for is guessed anew by their headers.
void MappingForm::separatorChosen() {
    mapping_ = mapping();
    mapping_.separator = kSeparators.at(static_cast<std::size_t>(separator_->currentIndex()));
    showPreview();
    emit changed();
}

void MappingForm::showRows(bool shown) {
    rows_->setVisible(shown);
}

CsvMapping MappingForm::mapping() const {
    CsvMapping mapping = withRoles(mapping_, columns_->roles());
    mapping.table = table_->text().trimmed().toStdString();
    mapping.release = release_->text().trimmed().toStdString();
    mapping.citation = citation_->text().trimmed().toStdString();
    mapping.decimalSign = kDecimalSigns.at(static_cast<std::size_t>(decimal_->currentIndex()));
    mapping.zeroIsMissing = zero_->isChecked();
    return mapping;
}

}  // namespace nettare
