#include "app/widgets/way_mark.h"

#include "app/gui/support/gui.h"
#include "app/theme/type.h"

#include <QPainter>

#include <array>

namespace nettare {

namespace {

constexpr std::array kMarks{Mark::Weighed, Mark::Label,   Mark::Table,
                            Mark::Density, Mark::Assumed, Mark::NoData};

/// The shape alone, in black: how a colour-blind reader or a grey print sees it.
QImage shapeOf(Mark mark, int sidePx) {
    QImage image{QSize{sidePx, sidePx}, QImage::Format_ARGB32};
    image.fill(Qt::transparent);
    QPainter painter{&image};
    paintMark(painter, mark, QRectF{0, 0, sidePx * 1.0, sidePx * 1.0}, Shade::Light);
    painter.end();
    for (int y = 0; y < sidePx; ++y)
        for (int x = 0; x < sidePx; ++x)
            image.setPixel(x, y, qRgba(0, 0, 0, qAlpha(image.pixel(x, y))));
    return image;
}

int differingPixels(const QImage& one, const QImage& other) {
    int count = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x)
            if (std::abs(qAlpha(one.pixel(x, y)) - qAlpha(other.pixel(x, y))) > 128) ++count;
    return count;
}

}  // namespace

TEST_CASE("marks can be told apart by shape alone, however small the text") {
    for (const int side : {10, 12, 24})
        for (const Mark one : kMarks)
            for (const Mark other : kMarks) {
                const bool sameShape = (one == Mark::Table && other == Mark::Density) ||
                                       (one == Mark::Density && other == Mark::Table);
                if (one == other || sameShape) continue;
                INFO("marks " << static_cast<int>(one) << " and " << static_cast<int>(other)
                              << " at " << side);
                CHECK(differingPixels(shapeOf(one, side), shapeOf(other, side)) >= side);
            }
}

TEST_CASE("every way to grams has a mark and a word of its own") {
    QStringList words;
    for (const Way way :
         {Way::Weighed, Way::Series, Way::Label, Way::Table, Way::Density, Way::Assumed}) {
        CHECK(markOf(way) != Mark::None);
        CHECK_FALSE(words.contains(wordOf(way)));
        words += wordOf(way);
    }
    CHECK(words == QStringList{QStringLiteral("weighed"), QStringLiteral("series"),
                               QStringLiteral("label"), QStringLiteral("table"),
                               QStringLiteral("by density"), QStringLiteral("assumed")});
    CHECK(wordOf(Mark::NoData) == QStringLiteral("no data"));
}

TEST_CASE("a mark grows with the text beside it and is read out by its word") {
    WayMark mark;
    mark.setFont(typeFont(TypeSize::Body));
    mark.setMark(Mark::Weighed, QStringLiteral("series, 6×"));
    const QSize small = mark.sizeHint();
    CHECK(spokenOf(mark).name == QStringLiteral("series, 6×"));
    CHECK(spokenOf(mark).value == QStringLiteral("series, 6×"));
    mark.setFont(typeFont(TypeSize::Step));
    CHECK(mark.sizeHint().width() > 2 * small.width());
    CHECK(mark.sizeHint().height() > 2 * small.height());
    CHECK(markSidePx(typeFont(TypeSize::Step)) > 2 * markSidePx(typeFont(TypeSize::Body)));
    showReady(mark, mark.sizeHint());
    CHECK(pixelsOf(picture(mark), colour(Role::Weighed, Shade::Light)) >
          static_cast<int>(markSidePx(mark.font())) * 20);
}

TEST_CASE("the marks can be looked at side by side") {
    for (const Shade shade : {Shade::Light, Shade::Dark}) {
        QImage sheet{QSize{360, 120}, QImage::Format_ARGB32};
        sheet.fill(colour(Role::Raised, shade));
        QPainter painter{&sheet};
        int x = 10;
        for (const Mark mark : kMarks) {
            paintMark(painter, mark, QRectF{x * 1.0, 10, 12, 12}, shade);
            paintMark(painter, mark, QRectF{x * 1.0, 40, 48, 48}, shade);
            x += 58;
        }
        painter.end();
        keepPicture(sheet,
                    shade == Shade::Light ? QStringLiteral("marks") : QStringLiteral("marks-dark"));
        CHECK(pixelsOf(sheet, colour(Role::Weighed, shade)) >= 48 * 48);
    }
}

}  // namespace nettare
