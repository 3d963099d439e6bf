#include "core/recipe/words.h"

namespace nettare {

std::string_view nameOf(Way way) {
    return wordFor(way, kWayWords);
}
std::string_view nameOf(Basis basis) {
    return wordFor(basis, kBasisWords);
}

std::optional<Basis> basisNamed(std::string_view name) {
    for (const Word<Basis>& word : kBasisWords)
        if (word.word == name) return word.meaning;
    return std::nullopt;
}

}  // namespace nettare
