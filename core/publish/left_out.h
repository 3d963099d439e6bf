#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/nutrition/figures.h"
#include "core/support/json.h"

namespace nettare {

/// A line that the recipe's own rules count in part or not at all.
struct UncountedLine {
    std::string name;         ///< "salt"; of a kept recipe "sauce, salt"
    std::string_view reason;  ///< "to taste", "optional"
    bool leftOut = true;      ///< else it counts in part

    /// "salt (to taste)"
    [[nodiscard]] std::string text() const;
};

/// All of them, those of kept recipes too, by name. `cooked` is of that dossier.
[[nodiscard]] std::vector<UncountedLine> uncountedLines(const Dossier& dossier,
                                                        const Cooked& cooked);

/// The same, but only lines that may hold some of that component.
[[nodiscard]] std::vector<UncountedLine> uncountedLines(const Dossier& dossier,
                                                        const Cooked& cooked, Component component);

/// "without: salt (to taste), parsley (optional)"; empty where nothing is left out.
[[nodiscard]] std::string withoutText(const std::vector<UncountedLine>& lines);

/// Those that are left out, as objects with "food" and "why".
[[nodiscard]] Json withoutJson(const std::vector<UncountedLine>& lines);

}  // namespace nettare
