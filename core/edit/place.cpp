#include "core/edit/place.h"

#include <charconv>

#include "core/support/text.h"

namespace nettare {

namespace {

/// RFC 6901: "~1" is a slash, "~0" a tilde, in this order.
std::string unescaped(std::string_view step) {
    if (step.find('~') == std::string_view::npos) return std::string{step};
    return replaced(replaced(step, "~1", "/"), "~0", "~");
}

/// An index as it is written: "0", "12"; no other form of a number.
std::optional<std::size_t> indexIn(std::string_view text) {
    std::size_t index = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), index);
    const bool plain = !text.empty() && (text.size() == 1 || text.front() != '0');
    if (!plain || read.ec != std::errc{} || read.ptr != text.data() + text.size())
        return std::nullopt;
    return index;
}

/// Entries with an id go by it alone, others by their index.
Json* entryOf(Json& list, const std::string& step) {
    Json::Array& items = *list.items();
    if (const auto named = indexOfId(list, step)) return &items[*named];
    const auto index = indexIn(step);
    if (!index || *index >= items.size() || items[*index].find("id") != nullptr) return nullptr;
    return &items[*index];
}

}  // namespace

std::optional<std::size_t> indexOfId(const Json& list, std::string_view id) {
    const Json::Array* items = list.items();
    if (items == nullptr) return std::nullopt;
    for (std::size_t i = 0; i < items->size(); ++i) {
        const Json* own = (*items)[i].find("id");
        if (own != nullptr && own->text() != nullptr && *own->text() == id) return i;
    }
    return std::nullopt;
}

PlaceParts partsOf(std::string_view place) {
    const std::size_t slash = place.rfind('/');
    if (slash == std::string_view::npos) return {{}, unescaped(place)};
    return {place.substr(0, slash), unescaped(place.substr(slash + 1))};
}

Json* valueAt(Json& document, std::string_view place) {
    Json* value = &document;
    while (!place.empty() && value != nullptr) {
        if (place.front() != '/') return nullptr;
        place.remove_prefix(1);
        const std::size_t end = std::min(place.find('/'), place.size());
        const std::string step = unescaped(place.substr(0, end));
        value = value->items() != nullptr ? entryOf(*value, step) : value->find(step);
        place.remove_prefix(end);
    }
    return value;
}

const Json* valueAt(const Json& document, std::string_view place) {
    // The way through a document is one; nothing is changed on it.
    return valueAt(const_cast<Json&>(document), place);
}

}  // namespace nettare
