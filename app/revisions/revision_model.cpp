#include "app/revisions/revision_model.h"

#include "app/revisions/revision_words.h"
#include "app/widgets/plain_tip.h"

#include <algorithm>

namespace nettare {

void RevisionModel::show(const QString& recipe, const std::vector<RevisionSummary>& revisions) {
    beginResetModel();
    if (recipe != recipe_) figures_.clear();
    recipe_ = recipe;
    revisions_.assign(revisions.begin(), revisions.end());
    std::sort(revisions_.begin(), revisions_.end(),
              [](const auto& a, const auto& b) { return a.number > b.number; });
    endResetModel();
}

void RevisionModel::setFigures(int number, RevisionFigures figures) {
    figures_.insert_or_assign(number, std::move(figures));
    const int row = rowOf(number);
    if (row >= 0) emit dataChanged(index(row, EnergyColumn), index(row, Ceiling));
}

int RevisionModel::rowOf(int number) const {
    const auto found = std::find_if(revisions_.begin(), revisions_.end(),
                                    [&](const auto& each) { return each.number == number; });
    return found == revisions_.end() ? -1 : static_cast<int>(found - revisions_.begin());
}

int RevisionModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(revisions_.size());
}

int RevisionModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

Cell RevisionModel::cellOf(const RevisionSummary& revision, int column) const {
    const auto known = figures_.find(revision.number);
    switch (column) {
        case Number: {
            Cell cell = numberCell(QString::number(revision.number));
            cell.strong = true;
            return cell;
        }
        case Note:
            return textCell(QString::fromStdString(revision.note));
        case Kept:
            return textCell(revisionDay(revision.at));
        case From:
            return textCell(parentText(revision));
        case EnergyColumn:
            return known == figures_.end() ? textCell(QStringLiteral("…")) : known->second.energy;
        case Ceiling:
            return textCell(known == figures_.end() ? QStringLiteral("…") : known->second.ceiling);
        default:
            return {};
    }
}

QVariant RevisionModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const RevisionSummary& revision = at(index.row());
    if (role == Qt::ToolTipRole && index.column() == Note)
        return plainTip(QString::fromStdString(revision.note));
    return cellData(cellOf(revision, index.column()), role);
}

QVariant RevisionModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        const bool number = section == Number || section == EnergyColumn;
        return QVariant{(number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case Number:
            return tr("No.");
        case Note:
            return tr("Note");
        case Kept:
            return tr("Kept");
        case From:
            return tr("Made from");
        case EnergyColumn:
            return tr("kcal a portion");
        case Ceiling:
            return tr("Ceiling");
        default:
            return {};
    }
}

}  // namespace nettare
