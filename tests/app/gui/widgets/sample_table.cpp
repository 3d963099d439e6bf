#include "app/gui/widgets/sample_table.h"

#include <utility>

namespace nettare {

SampleTable::SampleTable(QStringList headers, std::vector<std::vector<Cell>> rows)
    : headers_{std::move(headers)}, rows_{std::move(rows)} {}

int SampleTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int SampleTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(headers_.size());
}

QVariant SampleTable::data(const QModelIndex& index, int role) const {
    const auto row = static_cast<std::size_t>(index.row());
    return cellData(rows_.at(row).at(static_cast<std::size_t>(index.column())), role);
}

QVariant SampleTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) return {};
    if (role == Qt::DisplayRole) return headers_.at(section);
    if (role == Qt::TextAlignmentRole) return data(index(0, section), Qt::TextAlignmentRole);
    return {};
}

void SampleTable::put(int row, int column, const Cell& cell) {
    rows_.at(static_cast<std::size_t>(row)).at(static_cast<std::size_t>(column)) = cell;
    emit dataChanged(index(row, column), index(row, column));
}

SampleTable* skewerTable() {
    const auto text = [](const char* words, const char* muted = "") {
        return textCell(QString::fromUtf8(words), QString::fromUtf8(muted));
    };
    const auto number = [](const char* digits) { return numberCell(QString::fromUtf8(digits)); };
    Cell refused = text("2 bulps");
    refused.problem = QStringLiteral("“bulps” is no unit of this food; write bulbs or grams.");
    Cell atLeast = number("0.4");
    atLeast.before = QStringLiteral("at least");
    atLeast.ink = Role::Warning;
    Cell scaled = number("33.6");
    scaled.change = CellChange::Changed;
    scaled.was = QStringLiteral("47.5");
    Cell lemon = text("lemon juice");
    lemon.change = CellChange::Added;
    Cell paprika = text("smoked paprika");
    paprika.change = CellChange::Removed;
    Cell salt = text("fine salt");
    salt.change = CellChange::Equal;
    Cell strong = number("353");
    strong.strong = true;
    return new SampleTable{
        {QStringLiteral("Amount"), QStringLiteral("Ingredient"), QStringLiteral("Grams"),
         QStringLiteral("±"), QStringLiteral("Grams from"), QStringLiteral("kcal"),
         QStringLiteral("Share")},
        {{text("36"), text("prawns, shell on", "peeled"), strong, number("7"),
          wayCell(Mark::Weighed, QStringLiteral("series, 6×")), number("300"), shareCell(1.0)},
         {refused, text("fennel", "trimmed, in wedges"), number("382"), number("4"),
          wayCell(Mark::Weighed), number("118"), shareCell(0.39)},
         {text("3 tbsp"), text("olive oil", "less 7.4 g left"), scaled, number("0.75"),
          wayCell(Mark::Label), number("288.25"), shareCell(0.96)},
         {text("2 cloves"), text("garlic", "sliced"), number("4.9"), number("1.2"),
          wayCell(Mark::Table), number("-7"), shareCell(0.02)},
         {text("½"), lemon, number("17"), number("6"), wayCell(Mark::Assumed), atLeast,
          shareCell(0.01)},
         {text("¾ tsp"), paprika, number("1.4"), number("0.2"), wayCell(Mark::Density), number("3"),
          shareCell(0.0)},
         {text("¼ tsp"), salt, noDataCell(), noDataCell(), noDataCell(), noDataCell(),
          shareCell(0.0)}}};
}

}  // namespace nettare
