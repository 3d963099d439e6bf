#include "core/nutrition/size_of_thing.h"

#include "core/support/text.h"

namespace nettare {

const Unit* sizeOfThing(const Line& line) {
    constexpr std::string_view kOf = "size of a";
    const std::size_t at = line.size.find(kOf);
    if (line.unit != nullptr || at == std::string::npos) return nullptr;
    std::string_view thing = std::string_view{line.size}.substr(at + kOf.size());
    if (thing.starts_with('n')) thing.remove_prefix(1);
    return findSizeOfThing(trimmed(thing));
}

}  // namespace nettare
