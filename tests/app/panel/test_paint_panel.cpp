#include <catch2/catch.hpp>

#include "app/panel/paint_panel.h"
#include "app/panel/panel_fonts.h"
#include "app/panel/panel_layout.h"
#include "app/panel/start_painting.h"

#include "panel/sample_panels.h"

#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QPalette>

using namespace nettare;

namespace {

constexpr int kPixelsPerPoint = 4;

/// The panel on an image that was red, at four pixels a point.
QImage paintedImage(const PanelLayout& layout) {
    QImage image{layout.widthCpt / 100 * kPixelsPerPoint, layout.heightCpt / 100 * kPixelsPerPoint,
                 QImage::Format_ARGB32_Premultiplied};
    image.fill(Qt::red);
    QPainter painter{&image};
    painter.scale(kPixelsPerPoint / 100.0, kPixelsPerPoint / 100.0);
    paintPanel(painter, layout);
    return image;
}

/// Grey value at a place of the page, 0 black to 255 white; nothing where it has a hue.
std::optional<int> greyAt(const QImage& image, int xCpt, int yCpt) {
    const QColor colour =
        image.pixelColor(xCpt * kPixelsPerPoint / 100, yCpt * kPixelsPerPoint / 100);
    if (colour.red() != colour.green() || colour.green() != colour.blue()) return std::nullopt;
    return colour.red();
}

QImage skewerImage(const QPalette& palette) {
    startPainting();
    const QPalette before = QGuiApplication::palette();
    QGuiApplication::setPalette(palette);
    QImage image = paintedImage(layOutPanel(skewerPanel(), panelTextWidth));
    QGuiApplication::setPalette(before);
    return image;
}

}  // namespace

TEST_CASE("a panel is black on white whatever the palette says", "[panel]") {
    startPainting();
    const QImage night = skewerImage(QPalette{Qt::green, Qt::darkBlue});
    CHECK(night == skewerImage(QPalette{Qt::white}));
    int hued = 0;
    int black = 0;
    for (int y = 0; y < night.height(); ++y) {
        for (int x = 0; x < night.width(); ++x) {
            const QColor colour = night.pixelColor(x, y);
            hued += colour.saturation() != 0 || colour.alpha() != 255 ? 1 : 0;
            black += colour == QColor{Qt::black} ? 1 : 0;
        }
    }
    CHECK(hued == 0);
    CHECK(black > 10'000);
    CHECK(night.pixelColor(0, 0) == QColor{Qt::white});
    CHECK(night.pixelColor(night.width() - 1, night.height() - 1) == QColor{Qt::white});
}

TEST_CASE("bars are painted where the layout puts them, in full black", "[panel]") {
    startPainting();
    PanelLayout layout;
    layout.widthCpt = 2000;
    layout.heightCpt = 1000;
    layout.rules = {{500, 300, 1000, 25}, {500, 600, 1000, 200}};
    const QImage image = paintedImage(layout);
    CHECK(greyAt(image, 1000, 700) == 0);
    CHECK(greyAt(image, 475, 700) == 255);
    CHECK(greyAt(image, 1525, 700) == 255);
    CHECK(greyAt(image, 1000, 575) == 255);
    CHECK(greyAt(image, 1000, 825) == 255);
    CHECK(greyAt(image, 1000, 300) == 0);
    CHECK(greyAt(image, 1000, 350) == 255);
}

TEST_CASE("a hairline thinner than a pixel is still seen", "[panel]") {
    startPainting();
    QImage image{20, 10, QImage::Format_ARGB32_Premultiplied};
    PanelLayout layout;
    layout.widthCpt = 2000;
    layout.heightCpt = 1000;
    layout.rules = {{500, 340, 1000, 25}};
    QPainter painter{&image};
    painter.scale(0.01, 0.01);
    paintPanel(painter, layout);
    CHECK(image.pixelColor(10, 3).red() < 220);
    CHECK(image.pixelColor(10, 5) == QColor{Qt::white});
}

TEST_CASE("texts keep inside the room that the layout gave them", "[panel]") {
    startPainting();
    PanelLayout layout;
    layout.widthCpt = 10'000;
    layout.heightCpt = 3000;
    const PanelStyle style{PanelFace::Black, 1800, false};
    const int wideCpt = panelTextWidth("Calories", style);
    layout.texts = {{"Calories", style, 1000, 1000 + wideCpt, 2000}};
    const QImage image = paintedImage(layout);
    bool inked = false;
    for (int yCpt = 0; yCpt < layout.heightCpt; yCpt += 25) {
        for (int xCpt = 0; xCpt < layout.widthCpt; xCpt += 25) {
            if (greyAt(image, xCpt, yCpt) == 255) continue;
            inked = true;
            CHECK(xCpt >= 950);
            CHECK(xCpt <= 1050 + wideCpt);
            CHECK(yCpt >= 2000 - 1800 * 80 / 100);
            CHECK(yCpt <= 2000 + 1800 * 21 / 100);
        }
    }
    CHECK(inked);
}

TEST_CASE("the painter keeps its own pen, font and scale", "[panel]") {
    startPainting();
    QImage image{10, 10, QImage::Format_ARGB32_Premultiplied};
    QPainter painter{&image};
    painter.setPen(Qt::blue);
    painter.scale(0.01, 0.01);
    const QFont font = painter.font();
    paintPanel(painter, layOutPanel(skewerPanel(), panelTextWidth));
    CHECK(painter.pen().color() == QColor{Qt::blue});
    CHECK(painter.font() == font);
    CHECK(painter.transform().m11() == 0.01);
}
