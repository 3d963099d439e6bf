#include "app/start/window_start.h"

namespace nettare {

std::optional<WindowStart> windowStart(const std::vector<std::string>& arguments) {
    WindowStart start;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        const std::string& word = arguments[i];
        const bool named = word == "--kitchen" && i + 1 < arguments.size();
        if (word == "--exit-after-first-paint")
            start.exitAfterFirstPaint = true;
        else if (start.kitchen.empty() && named)
            start.kitchen = arguments[++i];
        else if (start.kitchen.empty() && word.ends_with(".nettare"))
            start.kitchen = word;
        else
            return std::nullopt;
    }
    return start;
}

}  // namespace nettare
