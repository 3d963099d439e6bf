#pragma once

#include <QString>

#include <vector>

#include "app/widgets/cell.h"
#include "core/food/own_food.h"
#include "db/food_value.h"

namespace nettare {

/// What is known of one component of a food, per 100 g edible portion.
struct ValueRow {
    QString name;
    Cell value;   ///< "no data" where it is missing
    Cell spread;  ///< half the 95 % interval of the mean; empty where nobody knows
    QString how;  ///< how it is known: "analytical, 7 samples", "by difference", "not in the table"
};

/// One row for each component that the program computes with, in its order, then what else the
/// table publishes. `published` are the values of its row as the tables have them.
[[nodiscard]] std::vector<ValueRow> valueRows(const TableFood& food,
                                              const std::vector<FoodValue>& published);

/// Those of an own food; `copied` are the values of the row that it was copied from.
[[nodiscard]] std::vector<ValueRow> valueRows(const OwnFood& own,
                                              const std::vector<FoodValue>& copied);

/// Half the 95 % interval of a value's mean, in its unit; nothing where nobody knows.
[[nodiscard]] std::optional<double> halfWidthOf(const Profile& profile, Component component);

/// A published number as it was written: "1.21".
[[nodiscard]] QString numberAsPrinted(double value);

}  // namespace nettare
