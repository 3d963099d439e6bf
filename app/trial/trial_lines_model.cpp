#include "app/trial/trial_lines_model.h"

#include "app/widgets/cell.h"
#include "app/words/error_sentence.h"
#include "core/publish/number_text.h"

namespace nettare {

TrialLinesModel::TrialLinesModel(Trial& trial, QObject* parent)
    : QAbstractTableModel{parent}, trial_{trial} {}

void TrialLinesModel::reset() {
    beginResetModel();
    grams_.clear();
    endResetModel();
}

void TrialLinesModel::setTried(const Cooked* cooked) {
    grams_.clear();
    if (cooked != nullptr)
        for (const LineReport& report : cooked->lines) grams_.push_back(report.eaten.value());
    if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

const Line& TrialLinesModel::line(int row) const {
    return trial_.evaluation()->dossier.main().lines[static_cast<std::size_t>(row)];
}

// A line without an amount that was not weighed has nothing to multiply.
bool TrialLinesModel::canTry(int row) const {
    const auto& report = trial_.evaluation()->cooked.lines[static_cast<std::size_t>(row)];
    return !isLeftOut(report.counting) && !line(row).toTaste;
}

void TrialLinesModel::multiply(int row, double by) {
    if (!canTry(row)) return;
    const auto line = static_cast<std::size_t>(row);
    trial_.setFactor(line, trial_.factor(line) * by);
    emit refused({});
    emit tried();
}

int TrialLinesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(trial_.lines());
}

int TrialLinesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant TrialLinesModel::data(const QModelIndex& index, int role) const {
    const Line& shown = line(index.row());
    const auto at = static_cast<std::size_t>(index.row());
    const double factor = trial_.factor(at);
    const QString amount =
        shown.toTaste ? tr("to taste") : QString::fromStdString(triedAmount(shown, 1));
    const QString tried = shown.toTaste
                              ? tr("%1 %").arg(QString::fromStdString(numberAt(0, 100 * factor)))
                              : QString::fromStdString(triedAmount(shown, factor));
    if (role == Qt::EditRole && index.column() == Tried) return tried;
    switch (index.column()) {
        case Food:
            return cellData(textCell(QString::fromStdString(shown.name),
                                     QString::fromStdString(shown.preparation)),
                            role);
        case Now:
            return cellData(textCell(amount), role);
        case Tried: {
            Cell cell = canTry(index.row()) ? textCell(tried) : textCell(tr("left out"));
            if (factor != 1) cell.change = CellChange::Changed;
            cell.strong = factor != 1;
            return cellData(cell, role);
        }
        default:
            if (at >= grams_.size()) return cellData(textCell({}), role);
            return cellData(numberCell(QString::fromStdString(numberAt(1, grams_[at]))), role);
    }
}

bool TrialLinesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || index.column() != Tried) return false;
    const auto factor = typedFactor(line(index.row()), value.toString().toStdString());
    if (!factor) {
        emit refused(QString::fromStdString(errorSentence(factor.error())));
        return false;
    }
    trial_.setFactor(static_cast<std::size_t>(index.row()), *factor);
    emit refused({});
    emit tried();
    return true;
}

QVariant TrialLinesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant{section == Grams ? Qt::AlignRight | Qt::AlignVCenter
                                         : Qt::AlignLeft | Qt::AlignVCenter};
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case Food:
            return tr("Ingredient");
        case Now:
            return tr("As it is");
        case Tried:
            return tr("Tried");
        default:
            return tr("g eaten");
    }
}

Qt::ItemFlags TrialLinesModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (index.column() == Tried && canTry(index.row())) flags |= Qt::ItemIsEditable;
    return flags;
}

}  // namespace nettare
