#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <string_view>

namespace nettare {

/// Words in lower case, sorted byte by byte and without a double; checked where a list is defined.
template <std::size_t count>
[[nodiscard]] constexpr bool isWordList(const std::array<std::string_view, count>& list) {
    for (std::size_t i = 1; i < count; ++i)
        if (!(list[i - 1] < list[i])) return false;
    return true;
}

template <std::size_t count>
[[nodiscard]] bool isIn(const std::array<std::string_view, count>& list, std::string_view word) {
    return std::ranges::binary_search(list, word);
}

/// The same for rows that begin with their word.
template <typename Row, std::size_t count>
[[nodiscard]] constexpr bool isWordTable(const std::array<Row, count>& table) {
    for (std::size_t i = 1; i < count; ++i)
        if (!(table[i - 1].word < table[i].word)) return false;
    return true;
}

/// The row of that word, null where there is none.
template <typename Row, std::size_t count>
[[nodiscard]] const Row* rowOf(const std::array<Row, count>& table, std::string_view word) {
    const auto row = std::ranges::lower_bound(table, word, {}, &Row::word);
    return row != table.end() && row->word == word ? &*row : nullptr;
}

}  // namespace nettare
