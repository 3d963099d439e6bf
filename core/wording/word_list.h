#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace nettare {

/// The first eight bytes as a number that sorts as they do. Most words of a list differ in them, so
/// that a search compares numbers and one text.
[[nodiscard]] constexpr std::uint64_t wordKey(std::string_view word) {
    std::uint64_t key = 0;
    for (std::size_t i = 0; i < 8; ++i)
        key = key << 8U | (i < word.size() ? static_cast<unsigned char>(word[i]) : 0U);
    return key;
}

/// Rows that begin with a `word` in lower case, found by it. No word may stand there twice; a
/// constexpr table that breaks this does not compile.
template <typename Row, std::size_t count>
class WordTable {
public:
    template <typename... Rows>
    constexpr explicit WordTable(Row first, Rows... others) : rows_{first, others...} {
        std::ranges::sort(rows_, {}, &Row::word);
        for (std::size_t i = 0; i < count; ++i) {
            keys_[i] = wordKey(rows_[i].word);
            if (i > 0 && rows_[i].word == rows_[i - 1].word) throw "a word stands there twice";
        }
    }

    /// Null where there is none.
    [[nodiscard]] constexpr const Row* rowOf(std::string_view word) const {
        const std::uint64_t key = wordKey(word);
        auto at = static_cast<std::size_t>(std::ranges::lower_bound(keys_, key) - keys_.begin());
        for (; at < count && keys_[at] == key; ++at)
            if (rows_[at].word == word) return &rows_[at];
        return nullptr;
    }

private:
    std::array<Row, count> rows_;
    std::array<std::uint64_t, count> keys_{};
};

template <typename Row, typename... Rows>
WordTable(Row, Rows...) -> WordTable<Row, 1 + sizeof...(Rows)>;

/// A row that is a word alone.
struct ListedWord {
    // NOLINTNEXTLINE(google-explicit-constructor): lists are written as plain words.
    constexpr ListedWord(const char* text) : word{text} {}
    std::string_view word;
};

/// Words in lower case, in any order.
template <std::size_t count>
class WordList {
public:
    template <typename... Words>
    constexpr explicit WordList(const char* first, Words... others)
        : table_{ListedWord{first}, ListedWord{others}...} {}

    [[nodiscard]] constexpr bool has(std::string_view word) const {
        return table_.rowOf(word) != nullptr;
    }

private:
    WordTable<ListedWord, count> table_;
};

template <typename... Words>
WordList(const char*, Words...) -> WordList<1 + sizeof...(Words)>;

}  // namespace nettare
