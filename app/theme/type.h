#pragma once

#include <QFont>

#include <cstdint>

namespace nettare {

/// Sizes of text in logical pixels.
enum class TypeSize : std::uint8_t {
    Caption = 12,
    Header = 13,  ///< headers of tables and groups, in capitals
    Body = 15,
    Section = 18,
    PaneTitle = 22,
    Step = 34,     ///< what is read an arm away
    Unit = 40,     ///< the unit beside a reading
    Reading = 72,  ///< the one figure of a screen
};

/// No italics: the 6 of Lato Italic is narrower than its other digits.
enum class Weight : std::uint8_t { Regular, Semibold, Bold };

/// Lato from the program itself, for words. Ask for the cut here: setBold() and font-weight do not
/// reach a font that names its cut. Needs a QGuiApplication.
[[nodiscard]] QFont typeFont(TypeSize size, Weight weight = Weight::Regular);

/// The same for figures: digits of one width, none kerned, so that they stand in columns.
[[nodiscard]] QFont figureFont(TypeSize size, Weight weight = Weight::Regular);

/// `font` at another size, over 0 px; cut and kerning stay.
[[nodiscard]] QFont resized(const QFont& font, int sizePx);

/// `font` in another cut; size and kerning stay.
[[nodiscard]] QFont recut(const QFont& font, Weight weight);

/// Height of the font's figures above the line they stand on, in px: what marks are sized by.
[[nodiscard]] double figureHeightPx(const QFont& font);

}  // namespace nettare
