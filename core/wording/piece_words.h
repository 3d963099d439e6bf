#pragma once

#include <string_view>

namespace nettare {

/// How a word counts pieces.
enum class PieceWordKind {
    Part,    ///< "clove", "bunch": of a plant or an animal, or cut from it
    Pack,    ///< "can", "bag": bought so, and a weight beside it is what one holds
    Manner,  ///< "knob", "handful": a manner of speaking, which the reading marks as assumed
};

struct PieceWord {
    std::string_view word;  ///< singular
    PieceWordKind kind;
    std::string_view piece;  ///< the word it is read as; empty for itself
    bool last;               ///< counts behind its food as well: "garlic cloves"
};

/// The word that is counted, by its singular or plural in lower case; null for others.
[[nodiscard]] const PieceWord* pieceWord(std::string_view lower);

/// The word that a reading keeps: "packet" is a "package".
[[nodiscard]] std::string_view pieceNamed(const PieceWord& word);

/// True where both words together name a food, as "pot roast" and "rib eye" do.
[[nodiscard]] bool isFoodTogether(std::string_view first, std::string_view second);

/// True where both words name a cut or a shape of food, not a count: "short rib", "fish stick".
/// Both in lower case, the second singular.
[[nodiscard]] bool isCutOrShape(std::string_view first, std::string_view second);

}  // namespace nettare
