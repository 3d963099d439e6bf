#include "app/widgets/beam_gauge.h"

#include "app/gui/support/gui.h"
#include "app/theme/dress.h"
#include "app/theme/palette.h"

#include <QApplication>

#include <cmath>

namespace nettare {

namespace {

BeamFigure skewerEnergy() {
    BeamFigure figure;
    figure.value = 144;
    figure.low = 139;
    figure.high = 149;
    figure.ceiling = 150;
    figure.valueText = QStringLiteral("144");
    figure.plusMinusText = QStringLiteral("5");
    figure.ceilingText = QStringLiteral("150");
    figure.unit = QStringLiteral("kcal");
    return figure;
}

/// The column of a picture that has most pixels of a colour; -1 without any.
int fullestColumn(const QImage& image, const QColor& ink) {
    int fullest = -1;
    int most = 0;
    for (int x = 0; x < image.width(); ++x) {
        const int count = pixelsOf(image.copy(x, 0, 1, image.height()), ink);
        if (count > most) {
            most = count;
            fullest = x;
        }
    }
    return fullest;
}

}  // namespace

TEST_CASE("a gauge is read out with its interval and its targets") {
    BeamGauge gauge;
    gauge.setAccessibleName(QStringLiteral("Energy per portion"));
    gauge.setFigure(skewerEnergy());
    CHECK(spokenOf(gauge).name == QStringLiteral("Energy per portion"));
    CHECK(spokenOf(gauge).value == QStringLiteral("144 kcal, plus or minus 5, ceiling 150"));

    BeamFigure open = skewerEnergy();
    open.high.reset();
    open.plusMinusText.clear();
    open.floor = 100;
    open.floorText = QStringLiteral("100");
    gauge.setFigure(open);
    CHECK(gauge.spokenValue() == QStringLiteral("at least 144 kcal, floor 100, ceiling 150"));

    BeamFigure missing;
    missing.ceiling = 150;
    missing.ceilingText = QStringLiteral("150");
    gauge.setFigure(missing);
    CHECK(gauge.spokenValue() == QStringLiteral("no data, ceiling 150"));
}

TEST_CASE("the stroke stands at the figure and the stop at the ceiling, by day and night") {
    BeamGauge gauge;
    gauge.setFigure(skewerEnergy());
    showReady(gauge, {320, 70});
    for (const Shade shade : {Shade::Light, Shade::Dark}) {
        dress(*qApp, shade);
        const QImage image = picture(gauge);
        const int stroke = fullestColumn(image, colour(Role::Cobalt, shade));
        const int stop = fullestColumn(image, colour(Role::Error, shade));
        CHECK(std::abs(stroke - gauge.positionOf(144)) <= 2);
        CHECK(std::abs(stop - gauge.positionOf(150)) <= 2);
        CHECK(stroke < stop);
        CHECK(pixelsOf(image, colour(Role::Selection, shade)) > 40);
    }
    dress(*qApp, Shade::Light);
}

TEST_CASE("a figure without data has no stroke on its gauge") {
    BeamGauge gauge;
    gauge.setFigure(BeamFigure{});
    showReady(gauge, {320, 70});
    const QImage image = picture(gauge);
    CHECK(pixelsOf(image, colour(Role::Cobalt, Shade::Light)) == 0);
    CHECK(pixelsOf(image, colour(Role::Outline, Shade::Light)) > 300);
}

TEST_CASE("ticks stand at round numbers, four to ten up to the end") {
    CHECK(tickStep(168) == 50.0);
    CHECK(tickStep(8) == 1.0);
    CHECK(tickStep(9) == 2.0);
    CHECK(tickStep(0.8) == Approx(0.1));
    CHECK(tickStep(0) == 1.0);
    for (double most = 0.013; most < 1e5; most *= 1.37) {
        const double ticks = most / tickStep(most);
        CHECK(ticks >= 3.19);
        CHECK(ticks <= 8.001);
    }
}

}  // namespace nettare
