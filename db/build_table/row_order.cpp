#include "db/build_table/row_order.h"

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>

#include "db/build_table/processing_place.h"
#include "db/build_table/row_rank.h"

namespace nettare {

std::vector<const TableFood*> inRowOrder(const TableText& text) {
    const auto key = [&](const TableFood* food) {
        RankedRow row{.name = food->name,
                      .group = food->group,
                      .place = processingPlace(food->name, food->group)};
        const auto everyday = std::ranges::find(text.everyday, food->row.number);
        if (everyday != text.everyday.end())
            row.everyday = static_cast<int>(everyday - text.everyday.begin());
        return std::pair{rowRank(row), food->row.number};
    };
    std::vector<const TableFood*> order;
    for (const TableFood& food : text.foods) order.push_back(&food);
    std::ranges::sort(order, {}, key);
    return order;
}

}  // namespace nettare
