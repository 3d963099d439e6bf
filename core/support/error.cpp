#include "core/support/error.h"

#include "core/support/text.h"

namespace nettare {

Error Error::with(std::string_view name, std::string_view text) const {
    Error copy = *this;
    copy.values.push_back({std::string{name}, shortened(text, 60)});
    return copy;
}

Error Error::at(std::string_view place) const {
    Error copy = *this;
    copy.pointer = place;
    return copy;
}

std::string_view Error::value(std::string_view name) const {
    for (const ErrorValue& entry : values)
        if (entry.name == name) return entry.text;
    return {};
}

}  // namespace nettare
