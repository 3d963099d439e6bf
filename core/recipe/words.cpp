#include "core/recipe/words.h"

namespace nettare {

namespace {

template <class T, std::size_t N>
std::string_view wordFor(T meaning, const std::array<Word<T>, N>& known) {
    for (const Word<T>& word : known)
        if (word.meaning == meaning) return word.word;
    return {};
}

}  // namespace

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
