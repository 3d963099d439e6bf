#include "app/loading/kept_reference.h"

#include <charconv>

#include "core/support/json_reader.h"

namespace nettare {

std::optional<KeptReference> keptReference(std::string_view text) {
    const std::size_t mark = text.find('#');
    if (mark == std::string_view::npos) return std::nullopt;
    KeptReference reference{std::string{text.substr(0, mark)}, 0};
    const std::string_view number = text.substr(mark + 1);
    const char* const end = number.data() + number.size();
    const auto read = std::from_chars(number.data(), end, reference.revision);
    const bool whole = read.ec == std::errc{} && read.ptr == end && number.front() != '0';
    if (!whole || reference.revision < 1 || !isIdentifier(reference.recipe)) return std::nullopt;
    return reference;
}

}  // namespace nettare
