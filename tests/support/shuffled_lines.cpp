#include "shuffled_lines.h"

#include <random>
#include <utility>

namespace nettare {

Json withLinesShuffled(Json document, std::uint32_t seed) {
    std::mt19937 random{seed};
    for (JsonMember& member : *document.members()) {
        if (member.key != "lines") continue;
        Json::Array& lines = *member.value.items();
        for (std::size_t left = lines.size(); left > 1; --left)
            std::swap(lines[left - 1], lines[random() % left]);
    }
    return document;
}

}  // namespace nettare
