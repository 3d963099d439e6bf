#include "app/panel_screen/true_size.h"

#include <catch2/catch.hpp>

namespace nettare {

TEST_CASE("a screen's own measure makes a point a point") {
    // 24 inch, 1920x1080: 91.8 dots an inch.
    const TrueSize size = trueSizeOn({{1920, 1080}, {531, 299}, 96});
    CHECK(size.measured);
    CHECK(size.pxPerPoint * 72 == Approx(91.8).margin(0.2));
}

TEST_CASE("a screen that reports no size, a square one or that of a wall is not believed") {
    const QSizeF pixels{1920, 1080};
    for (const QSizeF millimetres : {QSizeF{}, QSizeF{160, 160}, QSizeF{16000, 9000}}) {
        const TrueSize size = trueSizeOn({pixels, millimetres, 96});
        CHECK_FALSE(size.measured);
        CHECK(size.pxPerPoint == Approx(96.0 / 72));
    }
}

}  // namespace nettare
