#include <catch2/catch.hpp>

#include "app/panel/panel_fonts.h"
#include "app/panel/start_painting.h"

#include <QFont>
#include <QFontInfo>
#include <QGuiApplication>
#include <QRawFont>
#include <QString>

using namespace nettare;

namespace {

constexpr PanelFace kFaces[] = {PanelFace::Regular, PanelFace::Bold, PanelFace::Black};

}  // namespace

TEST_CASE("an application is started once, without a display", "[panel]") {
    startPainting();
    const auto* const first = QCoreApplication::instance();
    startPainting();
    CHECK(QCoreApplication::instance() == first);
    CHECK(QGuiApplication::platformName() == QStringLiteral("offscreen"));
}

TEST_CASE("each face is its own cut of Lato, sized in centipoints", "[panel]") {
    startPainting();
    const char* const cuts[] = {"Regular", "Bold", "Black"};
    for (std::size_t i = 0; i < std::size(kFaces); ++i) {
        const QFontInfo info{panelFont({kFaces[i], 900, false})};
        CHECK(info.family().startsWith(QStringLiteral("Lato")));
        CHECK(info.styleName() == QLatin1String{cuts[i]});
        CHECK(info.pixelSize() == 900);
    }
}

TEST_CASE("digits of a figure are all of one width, in any order", "[panel]") {
    startPainting();
    for (const PanelFace face : kFaces) {
        const PanelStyle style{face, 1000, true};
        const int eightWide = panelTextWidth("88888888", style);
        for (const char* digits : {"00000000", "11111111", "17171717", "74747474"})
            CHECK(panelTextWidth(digits, style) == eightWide);
    }
}

TEST_CASE("no ligature makes two letters narrower", "[panel]") {
    startPainting();
    for (const PanelFace face : kFaces) {
        const PanelStyle style{face, 2000, true};
        const int apart = panelTextWidth("f", style) + panelTextWidth("i", style);
        CHECK(std::abs(panelTextWidth("fi", style) - apart) <= 2);
    }
}

TEST_CASE("every character that panels print is in every face", "[panel]") {
    startPainting();
    const QString printed = QString::fromUtf8(
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,%*()/-<>:;' "
        "ÄÖÜäöüßÉéèçñµ½¼¾⅓⅔−–—≤≥±");
    for (const PanelFace face : kFaces) {
        const QRawFont raw = QRawFont::fromFont(panelFont({face, 1000, false}));
        REQUIRE(raw.isValid());
        for (const QChar character : printed) {
            INFO(QString{character}.toStdString());
            CHECK(raw.supportsCharacter(character));
        }
    }
}

TEST_CASE("widths grow with the size and with the weight", "[panel]") {
    startPainting();
    const int smallCpt = panelTextWidth("Total Fat", {PanelFace::Regular, 900, false});
    const int largeCpt = panelTextWidth("Total Fat", {PanelFace::Regular, 1800, false});
    CHECK(std::abs(largeCpt - 2 * smallCpt) <= 4);
    CHECK(panelTextWidth("Total Fat", {PanelFace::Bold, 900, false}) > smallCpt);
    CHECK(panelTextWidth("", {PanelFace::Bold, 900, false}) == 0);
}
