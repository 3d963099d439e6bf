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
constexpr std::size_t kShortestWord = 3;

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
    std::string_view words = trimmed(name.substr(0, name.find(',')));
    while (words.size() >= kShortestWord) {
        const auto densities = densitiesFor(tables, words);
        if (!densities) return fail(densities.error());
        if (densities->size() >= kFewestLike) {
            const auto [least, most] = std::ranges::minmax(*densities);
            return std::optional{LikeDensity{
                least, most,
                fmt::format("{} measures of {}", densities->size(), lowerAscii(words))}};
        }
        const std::size_t space = words.find(' ');
        words = space == std::string_view::npos ? "" : trimmed(words.substr(space));
    }
    return std::optional<LikeDensity>{};
}

}  // namespace nettare
