#pragma once

#include <QColor>
#include <QPalette>

#include <array>
#include <cstdint>

namespace nettare {

/// Day or night.
enum class Shade : std::uint8_t { Light, Dark };

/// What a colour is for. This is the program's one palette; no other file names a colour.
enum class Role : std::uint8_t {
    Paper,      ///< ground of the window
    Raised,     ///< ground of tables, fields and panes that stand on paper
    Alt,        ///< ground of what is pressed or set apart
    Selection,  ///< ground of the selected row or text
    Ink,        ///< text
    Ink2,       ///< second text: units, notes, headers
    Cobalt,     ///< rim, focus, link, the one main action
    OnCobalt,   ///< text on cobalt
    Weighed,    ///< mark: weighed
    Label,      ///< mark: label
    Table,      ///< mark: table, density
    Assumed,    ///< mark: assumed
    Warning,
    Error,
    Done,
    Outline,   ///< border of what can be operated; text of what is disabled
    Hairline,  ///< line that only decorates
    WarningFill,
    ErrorFill,
    DoneFill,
    AddedFill,
    RemovedFill,
};

inline constexpr int kRoles = 22;

/// Opaque.
[[nodiscard]] QColor colour(Role role, Shade shade);

/// The palette of widgets: Fusion draws everything from it.
[[nodiscard]] QPalette widgetPalette(Shade shade);

/// The shade that a widget's palette stands for: what paints itself asks this and needs no other
/// state.
[[nodiscard]] Shade shadeOf(const QPalette& palette);

/// WCAG 2.x, 1.4.3: text up to 24 px, or bold up to 18.66 px.
inline constexpr double kTextContrast = 4.5;
/// WCAG 2.x, 1.4.3 for larger text, 1.4.11 for outlines, marks and states.
inline constexpr double kShapeContrast = 3.0;

/// A colour that is painted on another, and the contrast that WCAG asks of it.
struct ColourPair {
    Role front, back;
    double leastContrast;
};

/// Every pair that the program paints and that must be seen. Hairlines only decorate; text of
/// what is disabled is exempt in WCAG, and reaches the contrast of shapes here.
inline constexpr std::array kColourPairs{
    ColourPair{Role::Ink, Role::Paper, kTextContrast},
    ColourPair{Role::Ink, Role::Raised, kTextContrast},
    ColourPair{Role::Ink, Role::Alt, kTextContrast},
    ColourPair{Role::Ink, Role::Selection, kTextContrast},
    ColourPair{Role::Ink, Role::WarningFill, kTextContrast},
    ColourPair{Role::Ink, Role::ErrorFill, kTextContrast},
    ColourPair{Role::Ink, Role::DoneFill, kTextContrast},
    ColourPair{Role::Ink, Role::AddedFill, kTextContrast},
    ColourPair{Role::Ink, Role::RemovedFill, kTextContrast},
    ColourPair{Role::Ink2, Role::Paper, kTextContrast},
    ColourPair{Role::Ink2, Role::Raised, kTextContrast},
    ColourPair{Role::Ink2, Role::Alt, kTextContrast},
    ColourPair{Role::Ink2, Role::Selection, kTextContrast},
    ColourPair{Role::Ink2, Role::WarningFill, kTextContrast},
    ColourPair{Role::Ink2, Role::ErrorFill, kTextContrast},
    ColourPair{Role::Ink2, Role::DoneFill, kTextContrast},
    ColourPair{Role::Ink2, Role::AddedFill, kTextContrast},
    ColourPair{Role::Ink2, Role::RemovedFill, kTextContrast},
    ColourPair{Role::Cobalt, Role::Paper, kTextContrast},
    ColourPair{Role::Cobalt, Role::Raised, kTextContrast},
    ColourPair{Role::Cobalt, Role::Alt, kTextContrast},
    ColourPair{Role::Cobalt, Role::Selection, kTextContrast},
    ColourPair{Role::OnCobalt, Role::Cobalt, kTextContrast},
    ColourPair{Role::Warning, Role::Paper, kTextContrast},
    ColourPair{Role::Warning, Role::Raised, kTextContrast},
    ColourPair{Role::Warning, Role::Selection, kTextContrast},
    ColourPair{Role::Warning, Role::WarningFill, kTextContrast},
    ColourPair{Role::Error, Role::Paper, kTextContrast},
    ColourPair{Role::Error, Role::Raised, kTextContrast},
    ColourPair{Role::Error, Role::Selection, kTextContrast},
    ColourPair{Role::Error, Role::ErrorFill, kTextContrast},
    ColourPair{Role::Done, Role::Paper, kTextContrast},
    ColourPair{Role::Done, Role::Raised, kTextContrast},
    ColourPair{Role::Done, Role::Selection, kTextContrast},
    ColourPair{Role::Done, Role::DoneFill, kTextContrast},
    ColourPair{Role::Weighed, Role::Paper, kShapeContrast},
    ColourPair{Role::Weighed, Role::Raised, kShapeContrast},
    ColourPair{Role::Weighed, Role::Selection, kShapeContrast},
    ColourPair{Role::Label, Role::Paper, kShapeContrast},
    ColourPair{Role::Label, Role::Raised, kShapeContrast},
    ColourPair{Role::Label, Role::Selection, kShapeContrast},
    ColourPair{Role::Table, Role::Paper, kShapeContrast},
    ColourPair{Role::Table, Role::Raised, kShapeContrast},
    ColourPair{Role::Table, Role::Selection, kShapeContrast},
    ColourPair{Role::Assumed, Role::Paper, kShapeContrast},
    ColourPair{Role::Assumed, Role::Raised, kShapeContrast},
    ColourPair{Role::Assumed, Role::Selection, kShapeContrast},
    ColourPair{Role::Outline, Role::Paper, kShapeContrast},
    ColourPair{Role::Outline, Role::Raised, kShapeContrast},
    ColourPair{Role::Outline, Role::Alt, kShapeContrast},
    ColourPair{Role::Outline, Role::Selection, kShapeContrast},
};

}  // namespace nettare
