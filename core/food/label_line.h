#pragma once

#include <optional>
#include <string_view>
#include <variant>

#include "core/food/component.h"

namespace nettare {

/// What packs print beside the components of this program, by INFOODS tagname, in grams.
enum class LabelOnly : unsigned char {
    NACL,    ///< salt: sodium x 2.5 (Regulation (EU) 1169/2011, Annex I, 11)
    CHOAVL,  ///< carbohydrate without fibre, as the EU and the UK print it
    POLYL,   ///< polyols, sugar alcohols; part of the carbohydrate
    STARCH,  ///< part of the carbohydrate
};

/// One line of a nutrition label: a component, or what only labels print.
using LabelLine = std::variant<Component, LabelOnly>;

/// The component that the line is; nothing where only labels print it.
[[nodiscard]] std::optional<Component> componentOf(const LabelLine& line);

/// "FAT", "CHOAVL"
[[nodiscard]] std::string_view tagnameOf(const LabelLine& line);
/// "kcal", "g", "mg" or "µg"
[[nodiscard]] std::string_view unitOf(const LabelLine& line);
/// "fat", "carbohydrate without fibre"
[[nodiscard]] std::string_view nameOf(const LabelLine& line);

/// The line of that tagname, case as written; nothing if there is none.
[[nodiscard]] std::optional<LabelLine> labelLineNamed(std::string_view tagname);

/// The most lines that one label can have.
inline constexpr std::size_t kLabelLineCount = kComponentCount + 4;

}  // namespace nettare
