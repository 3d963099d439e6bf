#pragma once

#include <cstddef>

#include "core/wording/line_scan.h"

namespace nettare {

/// True where a piece word stands at `i` with a food behind it: "clove" of "2 cloves garlic", not
/// of "6 cloves".
[[nodiscard]] bool isPieceAt(const LineScan& scan, std::size_t i);

/// The same for packs alone: "tin".
[[nodiscard]] bool isPackAt(const LineScan& scan, std::size_t i);

/// A pack with or without a food behind it: where the line said what one holds.
[[nodiscard]] bool isLonePackAt(const LineScan& scan, std::size_t i);

/// True where a unit needs no number: "pinch of salt", "tbsp sugar".
[[nodiscard]] bool isBareUnitAt(const LineScan& scan, std::size_t i);

/// Puts the piece word down with the bracket and "of" behind it; the token behind them.
[[nodiscard]] std::size_t takePiece(LineScan& scan, std::size_t i);

}  // namespace nettare
