#include "db/import/one_line.h"

#include "core/support/text.h"

namespace nettare {

std::string oneLine(std::string_view text) {
    std::string line;
    line.reserve(text.size());
    for (const std::string_view word : words(text)) {
        if (!line.empty()) line += ' ';
        line += word;
    }
    return line;
}

}  // namespace nettare
