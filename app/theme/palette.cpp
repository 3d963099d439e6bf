#include "app/theme/palette.h"

#include <cstddef>

namespace nettare {

namespace {

struct Enamel {
    QRgb light, dark;
};

/// "Enamel and iron": porcelain with a cobalt rim by day, cast iron by night. In the order of Role.
constexpr std::array<Enamel, kRoles> kEnamels{{
    {0xFFF7F6F2, 0xFF1B1D20},  // Paper
    {0xFFFFFFFF, 0xFF25282C},  // Raised
    {0xFFEFEEE8, 0xFF202327},  // Alt
    {0xFFDCE6F7, 0xFF2B3F63},  // Selection
    {0xFF23272E, 0xFFECE9E2},  // Ink
    {0xFF565C66, 0xFFB0B3B8},  // Ink2
    {0xFF1F4E9C, 0xFF8DB5F5},  // Cobalt
    {0xFFFFFFFF, 0xFF10213F},  // OnCobalt
    {0xFF0B6B61, 0xFF63CFC0},  // Weighed
    {0xFF7A3B78, 0xFFD9A3D6},  // Label
    {0xFF3A5A86, 0xFF9FBDE6},  // Table
    {0xFF8A5A00, 0xFFE6B656},  // Assumed
    {0xFF8A5A00, 0xFFE6B656},  // Warning
    {0xFFA8262B, 0xFFF2918B},  // Error
    {0xFF1B6B3A, 0xFF7CCB95},  // Done
    {0xFF747983, 0xFF90959D},  // Outline
    {0xFFD5D3CB, 0xFF3A3E44},  // Hairline
    {0xFFFBEFD5, 0xFF3A2F16},  // WarningFill
    {0xFFFBE3E1, 0xFF44211F},  // ErrorFill
    {0xFFE0F1E5, 0xFF1D3627},  // DoneFill
    {0xFFDDEFE6, 0xFF1F3A2E},  // AddedFill
    {0xFFF7DEDC, 0xFF45262A},  // RemovedFill
}};

constexpr int kMiddleLightness = 128;

struct PaletteEntry {
    QPalette::ColorRole entry;
    Role role, whenDisabled;
};

constexpr std::array kPaletteEntries{
    PaletteEntry{QPalette::Window, Role::Paper, Role::Paper},
    PaletteEntry{QPalette::WindowText, Role::Ink, Role::Outline},
    PaletteEntry{QPalette::Base, Role::Raised, Role::Raised},
    PaletteEntry{QPalette::AlternateBase, Role::Alt, Role::Alt},
    PaletteEntry{QPalette::Text, Role::Ink, Role::Outline},
    PaletteEntry{QPalette::PlaceholderText, Role::Ink2, Role::Outline},
    PaletteEntry{QPalette::Button, Role::Raised, Role::Raised},
    PaletteEntry{QPalette::ButtonText, Role::Ink, Role::Outline},
    PaletteEntry{QPalette::BrightText, Role::Error, Role::Outline},
    PaletteEntry{QPalette::Highlight, Role::Selection, Role::Alt},
    PaletteEntry{QPalette::HighlightedText, Role::Ink, Role::Outline},
    PaletteEntry{QPalette::Link, Role::Cobalt, Role::Outline},
    PaletteEntry{QPalette::LinkVisited, Role::Cobalt, Role::Outline},
    PaletteEntry{QPalette::ToolTipBase, Role::Raised, Role::Raised},
    PaletteEntry{QPalette::ToolTipText, Role::Ink, Role::Ink},
    PaletteEntry{QPalette::Light, Role::Raised, Role::Raised},
    PaletteEntry{QPalette::Midlight, Role::Hairline, Role::Hairline},
    PaletteEntry{QPalette::Mid, Role::Hairline, Role::Hairline},
    PaletteEntry{QPalette::Dark, Role::Outline, Role::Outline},
    PaletteEntry{QPalette::Shadow, Role::Outline, Role::Outline},
};

}  // namespace

QColor colour(Role role, Shade shade) {
    const Enamel& enamel = kEnamels[static_cast<std::size_t>(role)];
    return QColor::fromRgb(shade == Shade::Light ? enamel.light : enamel.dark);
}

QPalette widgetPalette(Shade shade) {
    QPalette palette;
    for (const PaletteEntry& each : kPaletteEntries) {
        palette.setColor(QPalette::All, each.entry, colour(each.role, shade));
        palette.setColor(QPalette::Disabled, each.entry, colour(each.whenDisabled, shade));
    }
    return palette;
}

Shade shadeOf(const QPalette& palette) {
    return palette.color(QPalette::Window).lightness() < kMiddleLightness ? Shade::Dark
                                                                          : Shade::Light;
}

}  // namespace nettare
