#include "app/trial/trial_figures_model.h"

#include <algorithm>

#include "app/compare/calm_difference.h"
#include "app/figures/figure_words.h"
#include "app/widgets/cell.h"
#include "core/publish/comparison.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

QString nameWithUnit(Component component) {
    const ComponentFacts& facts = factsOf(component);
    return TrialFiguresModel::tr("%1, %2").arg(
        componentName(component),
        QString::fromUtf8(facts.unit.data(), static_cast<qsizetype>(facts.unit.size())));
}

/// The number that a side shows: a lower bound where parts are missing.
Cell sideCell(const Figure& figure, const std::string& text) {
    Cell cell = numberCell(QString::fromStdString(text));
    if (figure.complete()) return cell;
    cell.before = TrialFiguresModel::tr("at least");
    cell.ink = Role::Warning;
    return cell;
}

}  // namespace

void TrialFiguresModel::show(const PerComponent<FigureDifference>& differences) {
    beginResetModel();
    rows_.clear();
    for (const Component component : kMainComponents)
        rows_.push_back(differences[indexOf(component)]);
    endResetModel();
}

int TrialFiguresModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int TrialFiguresModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant TrialFiguresModel::data(const QModelIndex& index, int role) const {
    const FigureDifference& row = rows_[static_cast<std::size_t>(index.row())];
    const int decimals = factsOf(row.before.component).decimals;
    const auto shownOf = [](const Figure& figure) {
        return figure.complete() ? figure.value : figure.atLeast;
    };
    const DifferenceText text = calmDifference(decimals, shownOf(row.before), shownOf(row.after));
    switch (index.column()) {
        case Name:
            return cellData(textCell(nameWithUnit(row.before.component)), role);
        case Now:
            return cellData(sideCell(row.before, text.before), role);
        case Tried: {
            Cell cell = sideCell(row.after, text.after);
            cell.strong = true;
            return cellData(cell, role);
        }
        default: {
            if (row.difference == 0) return cellData(textCell(tr("no change")), role);
            Cell cell = textCell(QString::fromStdString(text.difference));
            if (row.halfWidth > 0)
                cell.muted = QString::fromStdString(
                    halfWidthText(std::max(decimals, decimalsOf(text.difference)), row.halfWidth));
            return cellData(cell, role);
        }
    }
}

QVariant TrialFiguresModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant{section == Now || section == Tried ? Qt::AlignRight | Qt::AlignVCenter
                                                           : Qt::AlignLeft | Qt::AlignVCenter};
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case Name:
            return tr("Component");
        case Now:
            return tr("As it is");
        case Tried:
            return tr("Tried");
        default:
            return tr("Difference");
    }
}

}  // namespace nettare
