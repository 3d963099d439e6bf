#include "db/build_table/row_rank.h"

namespace nettare {

std::int64_t rowRank(const RankedRow& row) {
    constexpr std::int64_t kPlace = std::int64_t{1} << 40;
    return static_cast<std::int64_t>(row.place) * kPlace + row.everyday;
}

}  // namespace nettare
