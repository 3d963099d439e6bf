#include "app/kitchen/labelled_food.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/support/text.h"

namespace nettare {

namespace {

using Records = std::vector<OwnFoodRecord>;

/// Of a row as text, of whichever version.
constexpr std::string_view kRowOpening = "own ";

/// Those in use that begin so; those called so alone, where there are any. The UUID of one, or its
/// row as it was told when it was kept, is that one.
Records calledSo(const Records& foods, const std::string& asked) {
    Records whole;
    Records begun;
    for (const OwnFoodRecord& food : foods) {
        if (!food.inUse()) continue;
        if (asked == food.id() || (asked.starts_with(kRowOpening) && asked.ends_with(food.id())))
            return {food};
        const std::string name = lowerAscii(food.current.food.name);
        if (!name.starts_with(asked)) continue;
        (name == asked ? whole : begun).push_back(food);
    }
    return whole.empty() ? begun : whole;
}

Error ofKitchen(const Kitchen& kitchen, ErrorCode code) {
    Error error{code};
    error.file = kitchen.path();
    return error;
}

/// With their UUIDs where all are called the same.
std::string namesOf(const Records& foods, bool same) {
    constexpr std::size_t kMostNamed = 5;
    std::string names;
    for (std::size_t i = 0; i < foods.size() && i < kMostNamed; ++i) {
        const std::string id = same ? " (" + foods[i].id() + ")" : "";
        names += fmt::format("{}“{}”{}", i == 0 ? "" : ", ",
                             shortened(foods[i].current.food.name, 60), id);
    }
    return foods.size() > kMostNamed ? names + " …" : names;
}

}  // namespace

Result<OwnFoodRecord> labelledFoodNamed(const Kitchen& kitchen, std::string_view name) {
    const auto foods = kitchen.ownFoods();
    if (!foods) return fail(foods.error());
    const std::string asked = lowerAscii(trimmed(name));
    const Records called = asked.empty() ? Records{} : calledSo(*foods, asked);
    Records labelled = called;
    std::erase_if(labelled, [](const OwnFoodRecord& food) { return !food.current.food.label; });
    std::ranges::sort(labelled, {},
                      [](const OwnFoodRecord& food) { return lowerAscii(food.current.food.name); });
    if (labelled.size() == 1) return std::move(labelled.front());
    if (labelled.empty() && !called.empty())
        return fail(ofKitchen(kitchen, ErrorCode::NotALabel)
                        .with("food", called.front().current.food.name));
    if (labelled.empty())
        return fail(ofKitchen(kitchen, ErrorCode::LabelFoodUnknown).with("found", name));
    Error error = ofKitchen(kitchen, ErrorCode::LabelFoodAmbiguous).with("found", name);
    const bool same = lowerAscii(labelled.front().current.food.name) == asked;
    error.values.push_back({"known", namesOf(labelled, same)});
    return fail(error);
}

}  // namespace nettare
