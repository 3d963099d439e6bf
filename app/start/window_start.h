#pragma once

#include <optional>
#include <string>
#include <vector>

namespace nettare {

/// What the program opens its window on.
struct WindowStart {
    std::string kitchen;               ///< path; empty: the last one, else the sample
    bool exitAfterFirstPaint = false;  ///< for measuring the start
};

/// The window that the arguments ask for (without the program's name): none, "FILE.nettare" or
/// "--kitchen FILE" alone. Nothing where they are a command line.
[[nodiscard]] std::optional<WindowStart> windowStart(const std::vector<std::string>& arguments);

}  // namespace nettare
