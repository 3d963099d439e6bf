#include "app/theme/palette.h"

#include "app/gui/support/gui.h"

#include <algorithm>
#include <cmath>

namespace nettare {

namespace {

/// WCAG 2.x, "relative luminance"; channel from 0 to 1. The threshold is the corrected one.
double linearChannel(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linearChannel(colour.red() / 255.0) +
           0.7152 * linearChannel(colour.green() / 255.0) +
           0.0722 * linearChannel(colour.blue() / 255.0);
}

/// WCAG 2.x, "contrast ratio", which 1.4.3 (text) and 1.4.11 (outlines, marks) ask for.
double contrast(const QColor& one, const QColor& other) {
    const auto [dark, light] = std::minmax({luminance(one), luminance(other)});
    return (light + 0.05) / (dark + 0.05);
}

}  // namespace

TEST_CASE("every colour can be told from the ground it is painted on, by day and night") {
    CHECK(contrast(Qt::black, Qt::white) == Approx(21.0));
    // #767676 is known as the lightest grey that text on white may have.
    CHECK(contrast(QColor{0x76, 0x76, 0x76}, Qt::white) == Approx(4.54).margin(0.005));
    for (const Shade shade : {Shade::Light, Shade::Dark})
        for (const ColourPair& pair : kColourPairs) {
            INFO("role " << static_cast<int>(pair.front) << " on role "
                         << static_cast<int>(pair.back) << ", shade " << static_cast<int>(shade));
            CHECK(contrast(colour(pair.front, shade), colour(pair.back, shade)) >=
                  pair.leastContrast);
        }
}

TEST_CASE("widgets take their colours from the palette and tell their shade by them") {
    for (const Shade shade : {Shade::Light, Shade::Dark}) {
        const QPalette palette = widgetPalette(shade);
        CHECK(shadeOf(palette) == shade);
        CHECK(palette.color(QPalette::Window) == colour(Role::Paper, shade));
        CHECK(palette.color(QPalette::Text) == colour(Role::Ink, shade));
        CHECK(palette.color(QPalette::Highlight) == colour(Role::Selection, shade));
        CHECK(palette.color(QPalette::Disabled, QPalette::ButtonText) ==
              colour(Role::Outline, shade));
    }
}

}  // namespace nettare
