#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// The numbers of a table's foods with the order in which they came. Some twenty bytes a number.
class NumberIndex {
public:
    NumberIndex();

    /// Its place from 0 on; nothing where the number is there already.
    [[nodiscard]] std::optional<std::uint32_t> add(std::string_view number);
    [[nodiscard]] std::optional<std::uint32_t> find(std::string_view number) const;
    [[nodiscard]] std::size_t size() const { return ends_.size(); }

private:
    [[nodiscard]] std::string_view numberAt(std::uint32_t place) const;
    /// The slot that holds the number, or the free one where it belongs.
    [[nodiscard]] std::size_t slotOf(std::string_view number) const;
    void grow();

    std::string text_;                  ///< all numbers, one behind the other
    std::vector<std::size_t> ends_;     ///< of each number in `text_`
    std::vector<std::uint32_t> slots_;  ///< place + 1; 0 is free; a power of two of them
};

}  // namespace nettare
