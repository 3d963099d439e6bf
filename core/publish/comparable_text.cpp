#include "core/publish/comparable_text.h"

#include <fmt/core.h>

#include <algorithm>

namespace nettare {

namespace {

constexpr std::size_t kMostNamed = 3;

/// "oil, fennel and 2 more".
std::string namedFoods(const std::vector<std::string>& foods) {
    const std::size_t named = std::min(foods.size(), kMostNamed);
    std::string text;
    for (std::size_t i = 0; i < named; ++i) {
        const bool last = i + 1 == named && foods.size() == named;
        const char* joint = i == 0 ? "" : last ? " and " : ", ";
        text += fmt::format("{}{}", joint, foods[i]);
    }
    if (foods.size() > named) text += fmt::format(" and {} more", foods.size() - named);
    return text;
}

std::string clause(const NotComparable& reason, std::string_view state) {
    switch (reason.why) {
        case WhyNotComparable::Meaning:
            return fmt::format("one is of {}", reason.what);
        case WhyNotComparable::Counting:
            return fmt::format("{} count by another rule", reason.what);
        case WhyNotComparable::Residue:
            return fmt::format("{} was weighed only in {}", reason.what, state);
        case WhyNotComparable::CookedWeight:
            return fmt::format("the dish was weighed after cooking only in {}", state);
        case WhyNotComparable::MissingParts:
            break;
    }
    const std::string foods = namedFoods(reason.foods);
    if (reason.before && reason.after) return fmt::format("there are no data for {}", foods);
    return fmt::format("there are no data for {} in {}", foods, state);
}

}  // namespace

std::string notComparableText(const NotComparable& reason, std::string_view before,
                              std::string_view after) {
    return fmt::format("not comparable: {}", clause(reason, reason.after ? after : before));
}

}  // namespace nettare
