#include "app/compare/compare_cells.h"

#include "app/compare/compare_model.h"

#include <QCoreApplication>

namespace nettare {

namespace {

struct CompareCells {
    Q_DECLARE_TR_FUNCTIONS(CompareCells)
};

/// Which of a side's four texts a column shows.
int partOf(int column) {
    return column % CompareModel::kSideColumns;
}

Cell energyCell(const ComparedSide& side) {
    if (side.energyKcal.isEmpty()) return noDataCell();
    Cell cell = numberCell(side.energyKcal);
    if (side.energyAtLeast) cell.before = CompareCells::tr("at least");
    return cell;
}

Cell sideCell(const ComparedSide& side, int part) {
    switch (part) {
        case CompareModel::LeftAmount:
            return textCell(side.amount);
        case CompareModel::LeftFood:
            return textCell(side.food, side.preparation);
        case CompareModel::LeftGrams:
            return numberCell(side.grams);
        default:
            return energyCell(side);
    }
}

/// The right cell of a changed line: marked where it says something else than the left one.
Cell againstLeft(Cell cell, const Cell& left) {
    if (cell == left) return cell;
    cell.was = plainText(left);
    cell.change = CellChange::Changed;
    return cell;
}

Cell lineCell(const ComparedRow& row, int column) {
    const int part = partOf(column);
    const bool right = column >= CompareModel::RightAmount;
    const auto& side = right ? row.right : row.left;
    if (!side) return {};
    Cell cell = sideCell(*side, part);
    switch (row.kind) {
        case RowKind::Added:
            cell.change = CellChange::Added;
            break;
        case RowKind::Removed:
            cell.change = CellChange::Removed;
            break;
        case RowKind::Changed:
            if (right && row.left) cell = againstLeft(cell, sideCell(*row.left, part));
            break;
        case RowKind::Same:
            cell.change = CellChange::Equal;
            break;
        case RowKind::Total:
            cell.strong = true;
            break;
    }
    return cell;
}

Cell changeCell(const ComparedRow& row, int column) {
    const bool grams = column == CompareModel::GramsChange;
    Cell cell = numberCell(grams ? row.gramsChange : row.energyChange);
    cell.strong = row.differs();
    if (!row.differs()) cell.change = CellChange::Equal;
    return cell;
}

}  // namespace

Cell compareCell(const ComparedRow& row, int column) {
    return column < CompareModel::GramsChange ? lineCell(row, column) : changeCell(row, column);
}

}  // namespace nettare
