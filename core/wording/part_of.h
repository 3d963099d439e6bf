#pragma once

#include <cstddef>
#include <string>

#include "core/wording/line_scan.h"

namespace nettare {

/// "grated zest and juice of" before a number: what is taken of the pieces that follow.
struct PartOf {
    std::size_t end;    ///< the token behind "of", where the number stands
    std::string parts;  ///< "zest and juice"; empty where the line does not begin so
};

/// At token `i`. Preparation inside it is put down.
[[nodiscard]] PartOf readPartOf(LineScan& scan, std::size_t i);

/// Once the pieces are read as food: "juice of 1/2 lemon" is lemon juice by the lemon. `food` are
/// the tokens of their name.
void applyPartOf(LineScan& scan, const PartOf& part, Span food);

/// True where that word can be a part of a piece: "juice", "leaves". In lower case.
[[nodiscard]] bool isPartWord(std::string_view lower);

}  // namespace nettare
