#include "db/build_table/row_order.h"

#include <algorithm>
#include <cstddef>
#include <string>
#include <tuple>

#include "db/build_table/processing_place.h"

namespace nettare {

std::vector<const TableFood*> inRowOrder(const TableText& text) {
    const auto key = [&](const TableFood* food) {
        const auto everyday = std::ranges::find(text.everyday, food->row.number);
        return std::tuple{processingPlace(food->name, food->group),
                          everyday - text.everyday.begin(), food->row.number};
    };
    std::vector<const TableFood*> order;
    for (const TableFood& food : text.foods) order.push_back(&food);
    std::ranges::sort(order, {}, key);
    return order;
}

}  // namespace nettare
