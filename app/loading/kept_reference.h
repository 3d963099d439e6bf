#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace nettare {

/// A revision of a kitchen as a food entry names it: "barley-patties#2".
struct KeptReference {
    std::string recipe;
    int revision = 0;  ///< 1, 2, 3 ...

    [[nodiscard]] std::string text() const { return recipe + "#" + std::to_string(revision); }
};

/// The reference that the text is; nothing where it is none, such as a path.
[[nodiscard]] std::optional<KeptReference> keptReference(std::string_view text);

}  // namespace nettare
