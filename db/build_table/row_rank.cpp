#include "db/build_table/row_rank.h"

#include <algorithm>

namespace nettare {

std::int64_t rowRank(const RankedRow& row) {
    constexpr std::int64_t kEveryday = std::int64_t{1} << 8;
    constexpr std::int64_t kPlace = kEveryday << 32;
    const std::int64_t qualifiers =
        std::ranges::count_if(row.name, [](char c) { return c == ',' || c == '('; });
    return static_cast<std::int64_t>(row.place) * kPlace + row.everyday * kEveryday +
           std::min(qualifiers, kEveryday - 1);
}

}  // namespace nettare
