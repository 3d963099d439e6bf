#include "db/like_density.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "core/food/group_density.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kMostLike = 10;
constexpr std::size_t kFewestLike = 3;
constexpr std::size_t kShortestName = 3;

/// Of the foods that hold all these words; a slip forgiven is another food.
Result<std::vector<double>> densitiesFor(const FoodTables& tables, std::string_view words) {
    const auto found = tables.search(words, kMostLike);
    if (!found) return fail(found.error());
    std::vector<double> densities;
    if (!found->slips.empty()) return densities;
    for (const FoodHit& hit : found->hits) {
        const auto food = tables.find(hit.row);
        if (!food) return fail(food.error());
        const auto density = *food ? gramsPerMlOf((*food)->measures) : std::nullopt;
        if (density) densities.push_back(*density);
    }
    return densities;
}

}  // namespace

Result<std::optional<LikeDensity>> likeDensity(const FoodTables& tables, std::string_view name) {
    const std::string_view words = trimmed(name.substr(0, name.find(',')));
    std::optional<LikeDensity> like;
    if (words.size() < kShortestName) return like;
    const auto densities = densitiesFor(tables, words);
    if (!densities) return fail(densities.error());
    if (densities->size() < kFewestLike) return like;
    const auto [least, most] = std::ranges::minmax(*densities);
    like = LikeDensity{least, most,
                       fmt::format("{} measures of {}", densities->size(), lowerAscii(words))};
    return like;
}

}  // namespace nettare
