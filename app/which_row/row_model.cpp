#include "app/which_row/row_model.h"

#include <QStringList>

#include <algorithm>
#include <array>

#include "app/compare/calm_difference.h"
#include "app/figures/figure_words.h"
#include "app/widgets/cell.h"
#include "core/food/row_kin.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

/// Behind the first three columns.
constexpr std::array kEffects{Component::ENERC_KCAL, Component::FAT, Component::CHOCDF,
                              Component::PROCNT, Component::NA};

QString treatmentText(const TableFood& food) {
    QStringList words;
    for (const auto treatment : treatmentsOf(food.name)) {
        const std::string_view name = nameOf(treatment);
        words += QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    }
    return words.join(QStringLiteral(", "));
}

Cell nameCell(const RowOption& option) {
    Cell cell = textCell(QString::fromStdString(option.food.name),
                         option.current ? RowModel::tr("as it is now") : QString{});
    cell.strong = option.current;
    return cell;
}

Cell per100gCell(const TableFood& food) {
    const auto energy = food.profile[Component::ENERC_KCAL];
    return energy ? numberCell(QString::fromStdString(numberAt(0, *energy))) : noDataCell();
}

/// The figure with this row, and behind it how far it is from the one as it is.
Cell effectCell(const RowOption& option, Component component) {
    if (!option.differences) return noDataCell();
    const FigureDifference& row = (*option.differences)[indexOf(component)];
    const int decimals = factsOf(component).decimals;
    const auto shown = [](const Figure& figure) {
        return figure.complete() ? figure.value : figure.atLeast;
    };
    const DifferenceText text = calmDifference(decimals, shown(row.before), shown(row.after));
    Cell cell = numberCell(QString::fromStdString(text.after));
    if (!row.after.complete()) {
        cell.before = RowModel::tr("at least");
        cell.ink = Role::Warning;
    }
    if (option.current) return cell;
    cell.unit = row.kind == DifferenceKind::None ? QStringLiteral("=")
                                                 : QString::fromStdString(text.difference);
    cell.strong = row.kind == DifferenceKind::Real;
    return cell;
}

}  // namespace

void RowModel::show(std::vector<RowOption> options) {
    beginResetModel();
    options_ = std::move(options);
    endResetModel();
}

const RowOption* RowModel::at(int row) const {
    const bool there = row >= 0 && row < static_cast<int>(options_.size());
    return there ? &options_[static_cast<std::size_t>(row)] : nullptr;
}

int RowModel::currentRow() const {
    const auto current = std::ranges::find(options_, true, &RowOption::current);
    return current == options_.end() ? -1 : static_cast<int>(current - options_.begin());
}

int RowModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(options_.size());
}

int RowModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(Count);
}

QVariant RowModel::data(const QModelIndex& index, int role) const {
    const RowOption* option = at(index.row());
    if (option == nullptr) return {};
    switch (index.column()) {
        case Name:
            return cellData(nameCell(*option), role);
        case Treatment:
            return cellData(textCell(treatmentText(option->food)), role);
        case Per100g:
            return cellData(per100gCell(option->food), role);
        default:
            return cellData(
                effectCell(*option, kEffects.at(static_cast<std::size_t>(index.column() - Energy))),
                role);
    }
}

QVariant RowModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant{(section >= Per100g ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case Name:
            return tr("Row of the table");
        case Treatment:
            return tr("What was done to it");
        case Per100g:
            return tr("kcal/100 g");
        default: {
            const Component component = kEffects.at(static_cast<std::size_t>(section - Energy));
            const std::string_view unit = factsOf(component).unit;
            return tr("%1, %2").arg(
                componentName(component),
                QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size())));
        }
    }
}

}  // namespace nettare
