#include "db/import/number_index.h"

#include <functional>

namespace nettare {

namespace {

constexpr std::size_t kFirstSlots = 1024;

}  // namespace

NumberIndex::NumberIndex() : slots_(kFirstSlots) {}

std::optional<std::uint32_t> NumberIndex::add(std::string_view number) {
    std::size_t slot = slotOf(number);
    if (slots_[slot] != 0) return std::nullopt;
    if (2 * (ends_.size() + 1) > slots_.size()) {
        grow();
        slot = slotOf(number);
    }
    text_ += number;
    ends_.push_back(text_.size());
    slots_[slot] = static_cast<std::uint32_t>(ends_.size());
    return slots_[slot] - 1;
}

std::optional<std::uint32_t> NumberIndex::find(std::string_view number) const {
    const std::uint32_t held = slots_[slotOf(number)];
    if (held == 0) return std::nullopt;
    return held - 1;
}

std::string_view NumberIndex::numberAt(std::uint32_t place) const {
    const std::size_t start = place == 0 ? 0 : ends_[place - 1];
    return std::string_view{text_}.substr(start, ends_[place] - start);
}

std::size_t NumberIndex::slotOf(std::string_view number) const {
    const std::size_t mask = slots_.size() - 1;
    std::size_t slot = std::hash<std::string_view>{}(number)&mask;
    while (slots_[slot] != 0 && numberAt(slots_[slot] - 1) != number) slot = (slot + 1) & mask;
    return slot;
}

void NumberIndex::grow() {
    slots_.assign(2 * slots_.size(), 0);
    for (std::uint32_t place = 0; place < ends_.size(); ++place)
        slots_[slotOf(numberAt(place))] = place + 1;
}

}  // namespace nettare
