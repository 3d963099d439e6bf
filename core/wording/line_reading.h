#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/amount.h"

namespace nettare {

/// A number that is one thing with its mark as the decimal mark and another with it as the mark of
/// thousands: "1,500". Nobody but the cook can say which.
struct AskedAmount {
    Amount decimal, grouped;
};

/// An amount in a unit: what one tin holds, or a line's amount said a second time.
struct LineMeasure {
    std::optional<Amount> amount;      ///< nothing where it is asked
    std::optional<AskedAmount> asked;  ///< both readings of the number
    /// Symbols of units, in static storage: one is decided, two are asked, most likely first.
    std::vector<std::string_view> units;
    std::string counted;  ///< in their stead what is counted: "medium" of "about 10 medium"
    bool about = false;
};

/// What a piece of the text went into.
enum class LinePartKind {
    Blank,  ///< white space between fields
    Amount,
    Unit,
    Piece,
    Each,
    Equals,
    Size,
    Fill,
    Food,
    Preparation,
    Alternative,
    Optional,
    ToTaste,
    Rest,  ///< not understood
};

/// Bytes [begin, end) of the text. A field's commas, brackets and little words ("of") are with it.
struct LinePart {
    LinePartKind kind;
    std::size_t begin, end;
};

/// An ingredient line, read. Texts are as written, with single blanks; empty where there is none.
struct LineReading {
    std::string text;  ///< the whole line

    std::optional<Amount> amount;            ///< how many units or pieces
    std::optional<AskedAmount> amountAsked;  ///< in its stead where the number is asked
    std::vector<std::string_view> units;     ///< as LineMeasure::units; empty where pieces count
    std::string piece;                       ///< the word that is counted, singular: "clove", "can"
    std::vector<LineMeasure> each;           ///< what one piece holds or weighs, in several units
    std::vector<LineMeasure> equals;         ///< the same amount, said again
    std::string size;                        ///< "large", "2-inch", "about 7 cm across"
    std::string fill;                        ///< "heaping", "rounded", "level", "scant", "generous"
    std::string food;
    std::string preparation;  ///< parts joined by ", " in the order of the line
    std::string alternative;  ///< what follows "or"

    bool optional = false;
    bool toTaste = false;
    bool plusMore = false;
    bool about = false;    ///< the number is marked as about
    bool assumed = false;  ///< the amount is a manner of speaking: "a few", "a knob"

    std::vector<std::string> rest;  ///< what was not understood, in order
    std::vector<LinePart> parts;    ///< the whole text, in order, without gap or overlap
};

/// True where both say the same: all fields but the text and its parts, numbers by their values.
[[nodiscard]] bool sameFields(const LineReading& a, const LineReading& b);

}  // namespace nettare
