#pragma once

#include <string>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

/// A text of the kitchen as JSON. Fails: KitchenDamaged, naming `what`.
[[nodiscard]] inline Result<Json> storedJson(const KitchenStore& store, const std::string& text,
                                             const std::string& what) {
    auto json = parseJson(text);
    if (!json) return fail(damaged(store.path, what + " is no JSON"));
    return json;
}

/// What stands at a key as text; empty where there is none.
[[nodiscard]] inline std::string textIn(const Json& json, std::string_view key) {
    const Json* member = json.find(key);
    const std::string* text = member != nullptr ? member->text() : nullptr;
    return text != nullptr ? *text : std::string{};
}

/// The entries of a list; none where there is no list.
[[nodiscard]] inline const Json::Array& entriesIn(const Json& json, std::string_view key) {
    static const Json::Array kNone;
    const Json* member = json.find(key);
    const Json::Array* items = member != nullptr ? member->items() : nullptr;
    return items != nullptr ? *items : kNone;
}

}  // namespace nettare
