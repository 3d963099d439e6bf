#pragma once

#include <QAbstractListModel>

#include <functional>
#include <set>
#include <vector>

#include "db/food_groups.h"

namespace nettare {

/// A row of the list of foods: a heading, a food, or a group that can be entered.
struct FoodListRow {
    enum class Kind { Heading, Food, Group };

    Kind kind = Kind::Food;
    QString heading;  ///< of a heading
    FoodHit hit;      ///< of a food
    FoodGroup group;  ///< of a group
};

[[nodiscard]] FoodListRow headingRow(const QString& text);
[[nodiscard]] FoodListRow foodRow(FoodHit hit);
[[nodiscard]] FoodListRow groupRow(FoodGroup group);

/// The rows of the pantry's list. What is long comes page by page, as far as the list is scrolled.
class FoodListModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum ListRole {
        KindRole = Qt::UserRole,
        NoteRole,    ///< second line
        EnergyRole,  ///< kcal per 100 g as text; empty where it is missing
        KnownRole,   ///< "39 of 41"
        MarkedRole,  ///< chosen to be compared
        LabelRole,   ///< read from a package
    };
    /// Answers the rows that follow; none at the end.
    using NextPage = std::function<std::vector<FoodListRow>()>;

    using QAbstractListModel::QAbstractListModel;

    /// `uses` says in how many recipes a row is.
    void show(std::vector<FoodListRow> rows, UsedRows uses, NextPage next = {});
    /// Rows marked as chosen, by TableRow::text().
    void setMarked(std::set<std::string> marked);
    /// The own foods that were read from packages, by their numbers; before show().
    void setLabelled(std::set<std::string> numbers);
    /// Null for an index that is none.
    [[nodiscard]] const FoodListRow* row(const QModelIndex& index) const;
    [[nodiscard]] QModelIndex indexOfFood(const TableRow& row) const;
    /// The first row that can be chosen.
    [[nodiscard]] QModelIndex first() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

private:
    [[nodiscard]] QVariant foodData(const FoodHit& hit, int role) const;
    [[nodiscard]] int usesOf(const FoodHit& hit) const;
    [[nodiscard]] bool isLabelled(const FoodHit& hit) const;

    std::vector<FoodListRow> rows_;
    UsedRows uses_;
    NextPage next_;
    std::set<std::string> marked_, labelled_;
};

}  // namespace nettare
