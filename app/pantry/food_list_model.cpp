#include "app/pantry/food_list_model.h"

#include <algorithm>

#include "app/pantry/food_words.h"
#include "app/widgets/plain_tip.h"
#include "core/food/own_food.h"
#include "core/publish/number_text.h"

namespace nettare {

FoodListRow headingRow(const QString& text) {
    FoodListRow row;
    row.kind = FoodListRow::Kind::Heading;
    row.heading = text;
    return row;
}

FoodListRow foodRow(FoodHit hit) {
    FoodListRow row;
    row.hit = std::move(hit);
    return row;
}

FoodListRow groupRow(FoodGroup group) {
    FoodListRow row;
    row.kind = FoodListRow::Kind::Group;
    row.group = std::move(group);
    return row;
}

void FoodListModel::show(std::vector<FoodListRow> rows, UsedRows uses, NextPage next) {
    beginResetModel();
    rows_ = std::move(rows);
    uses_ = std::move(uses);
    next_ = std::move(next);
    endResetModel();
}

void FoodListModel::setMarked(std::set<std::string> marked) {
    marked_ = std::move(marked);
    if (!rows_.empty())
        emit dataChanged(index(0), index(static_cast<int>(rows_.size()) - 1),
                         {MarkedRole, Qt::AccessibleTextRole});
}

void FoodListModel::setLabelled(std::set<std::string> numbers) {
    labelled_ = std::move(numbers);
}

bool FoodListModel::isLabelled(const FoodHit& hit) const {
    return hit.row.table == kOwnTable && labelled_.contains(hit.row.number);
}

const FoodListRow* FoodListModel::row(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= rowCount()) return nullptr;
    return &rows_[static_cast<std::size_t>(index.row())];
}

QModelIndex FoodListModel::indexOfFood(const TableRow& row) const {
    const auto found = std::ranges::find_if(rows_, [&](const FoodListRow& each) {
        return each.kind == FoodListRow::Kind::Food && each.hit.row == row;
    });
    return found == rows_.end() ? QModelIndex{} : index(static_cast<int>(found - rows_.begin()));
}

QModelIndex FoodListModel::first() const {
    const auto found = std::ranges::find_if(
        rows_, [](const FoodListRow& each) { return each.kind != FoodListRow::Kind::Heading; });
    return found == rows_.end() ? QModelIndex{} : index(static_cast<int>(found - rows_.begin()));
}

int FoodListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int FoodListModel::usesOf(const FoodHit& hit) const {
    const auto found = uses_.find(hit.row.text());
    return found == uses_.end() ? 0 : found->second;
}

QVariant FoodListModel::foodData(const FoodHit& hit, int role) const {
    const QString name = QString::fromStdString(hit.name);
    const QString energy = hit.energyKcalPer100g
                               ? QString::fromStdString(numberAt(0, *hit.energyKcalPer100g))
                               : QString{};
    const QString known = tr("%1 of %2").arg(hit.knownComponents).arg(kComponentCount);
    const bool marked = marked_.contains(hit.row.text());
    switch (role) {
        case Qt::DisplayRole:
            return name;
        case Qt::ToolTipRole:
            return plainTip(name);
        case NoteRole:
            return hitNote(hit, usesOf(hit), isLabelled(hit));
        case EnergyRole:
            return energy;
        case LabelRole:
            return isLabelled(hit);
        case KnownRole:
            return known;
        case MarkedRole:
            return marked;
        case Qt::AccessibleTextRole: {
            const QString spoken =
                tr("%1, %2, %3, known: %4")
                    .arg(name, hitNote(hit, usesOf(hit), isLabelled(hit)),
                         energy.isEmpty() ? tr("energy: no data") : tr("%1 kcal").arg(energy),
                         known);
            return marked ? tr("%1, chosen to compare").arg(spoken) : spoken;
        }
        default:
            return {};
    }
}

QVariant FoodListModel::data(const QModelIndex& index, int role) const {
    const FoodListRow* const each = row(index);
    if (each == nullptr) return {};
    if (role == KindRole) return static_cast<int>(each->kind);
    if (each->kind == FoodListRow::Kind::Food) return foodData(each->hit, role);
    const bool heading = each->kind == FoodListRow::Kind::Heading;
    const QString text = heading ? each->heading : QString::fromStdString(each->group.name);
    const QString note = heading
                             ? QString{}
                             : tr("%1 · %2 foods")
                                   .arg(sourceName({each->group.table, each->group.release, {}}),
                                        groupedCount(each->group.foods));
    if (role == Qt::DisplayRole) return text;
    if (role == NoteRole) return note;
    if (role == Qt::AccessibleTextRole) return heading ? text : tr("%1, %2").arg(text, note);
    return {};
}

Qt::ItemFlags FoodListModel::flags(const QModelIndex& index) const {
    const FoodListRow* const each = row(index);
    if (each == nullptr || each->kind == FoodListRow::Kind::Heading) return Qt::NoItemFlags;
    return Qt::ItemIsSelectable | Qt::ItemIsEnabled;
}

bool FoodListModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && next_ != nullptr;
}

void FoodListModel::fetchMore(const QModelIndex& parent) {
    if (!canFetchMore(parent)) return;
    std::vector<FoodListRow> more = next_();
    if (more.empty()) {
        next_ = {};
        return;
    }
    const int count = rowCount();
    beginInsertRows({}, count, count + static_cast<int>(more.size()) - 1);
    for (FoodListRow& each : more) rows_.push_back(std::move(each));
    endInsertRows();
}

}  // namespace nettare
