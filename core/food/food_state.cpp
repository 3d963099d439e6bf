#include "core/food/food_state.h"

#include <algorithm>
#include <array>
#include <span>

#include "core/support/text.h"

namespace nettare {

namespace {

using Words = std::vector<std::string>;

/// The words of a name, those with a hyphen also by their last part: "stir-fried", "sun-dried".
Words wordsOf(std::string_view text) {
    Words found;
    const std::string lower = lowerAscii(text);
    for (const std::string_view part : split(lower, ','))
        for (const std::string_view word : words(part)) {
            found.emplace_back(word);
            const std::size_t hyphen = word.rfind('-');
            if (hyphen != std::string_view::npos) found.emplace_back(word.substr(hyphen + 1));
        }
    return found;
}

bool hasAny(const Words& said, std::span<const std::string_view> wanted) {
    return std::ranges::any_of(
        wanted, [&](std::string_view word) { return std::ranges::find(said, word) != said.end(); });
}

constexpr std::array<std::string_view, 2> kDrained{"drained", "rinsed"};
constexpr std::array<std::string_view, 18> kCooked{
    "cooked",   "boiled",  "roasted", "baked",   "fried",      "sautéed",
    "sauteed",  "steamed", "braised", "broiled", "grilled",    "stewed",
    "simmered", "poached", "browned", "toasted", "microwaved", "scrambled"};
/// Of preparations: those that say how it comes to the scale.
constexpr std::array<std::string_view, 5> kCookedBefore{"cooked", "boiled", "steamed", "poached",
                                                        "simmered"};
constexpr std::array<std::string_view, 3> kDry{"dry", "dried", "dehydrated"};
constexpr std::array<std::string_view, 1> kDried{"dried"};
constexpr std::array<std::string_view, 5> kRaw{"raw", "fresh", "uncooked", "unbaked", "unheated"};
/// Where "dry" is a kind and no state.
constexpr std::array<std::string_view, 5> kDryByKind{"wine", "salami", "sausage", "vermouth",
                                                     "sherry"};

/// A tin with all that is in it.
bool isWithLiquid(const TableFood& row) {
    const std::string name = lowerAscii(row.name);
    constexpr std::string_view kSays[] = {"with liquid", "with its liquid", "solids and liquid"};
    return std::ranges::any_of(
        kSays, [&](std::string_view words) { return name.find(words) != std::string::npos; });
}

}  // namespace

// Cooked before drained: what was boiled is drained as a matter of course.
std::optional<FoodState> stateOf(const TableFood& food) {
    if (food.label && food.label->state == LabelState::Drained) return FoodState::Drained;
    if (food.label && food.label->state == LabelState::Prepared) return FoodState::Cooked;
    const Words said = wordsOf(food.name);
    if (hasAny(said, kCooked)) return FoodState::Cooked;
    if (hasAny(said, kDrained)) return FoodState::Drained;
    if (lowerAscii(food.name).find("with bone") != std::string::npos) return FoodState::WithBone;
    if (hasAny(said, kDry) && !hasAny(said, kDryByKind)) return FoodState::Dry;
    if (hasAny(said, kRaw)) return FoodState::Raw;
    return std::nullopt;
}

std::optional<FoodState> stateOfPreparation(std::string_view preparation) {
    if (preparation.empty()) return std::nullopt;
    const Words said = wordsOf(preparation);
    if (hasAny(said, kCookedBefore)) return FoodState::Cooked;
    if (hasAny(said, kDrained)) return FoodState::Drained;
    return std::nullopt;
}

bool holdsFor(const TableFood& row, FoodState weighed) {
    const auto own = stateOf(row);
    if (!own && weighed == FoodState::Drained) return !isWithLiquid(row);
    if (!own || own == weighed) return weighed != FoodState::WithBone || own == weighed;
    const bool uncooked = (own == FoodState::Raw && weighed == FoodState::Dry) ||
                          (own == FoodState::Dry && weighed == FoodState::Raw);
    return uncooked && !hasAny(wordsOf(row.name), kDried);
}

}  // namespace nettare
