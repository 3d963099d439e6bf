#include "core/quantity/kitchen_volume.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "core/quantity/amount.h"
#include "core/support/text.h"

using namespace nettare;

namespace {

constexpr MeasureSystem kSystems[] = {MeasureSystem::UsCustomary, MeasureSystem::UsLabel,
                                      MeasureSystem::Metric, MeasureSystem::Imperial,
                                      MeasureSystem::Australian};

Volume cups(double amount, MeasureSystem system = MeasureSystem::UsCustomary) {
    return volumeOf(amount, *findUnit("cup", system));
}

SpoonedVolume written(Volume volume, double tolerance = 0.01,
                      MeasureSystem system = MeasureSystem::UsCustomary) {
    const auto spooned = writeMeasure(volume, system, tolerance);
    REQUIRE(spooned);
    return *spooned;
}

/// Millilitres of "1/4 cup plus 1 tbsp", read word by word.
double readBack(const std::string& text, MeasureSystem system) {
    double sum = 0;
    const std::string parts = replaced(text, " plus ", "+");
    for (const std::string_view part : split(parts, '+')) {
        const std::size_t space = part.rfind(' ');
        std::string_view symbol = part.substr(space + 1);
        if (symbol == "cups") symbol = "cup";
        const auto amount = readAmount(part.substr(0, space));
        REQUIRE(amount);
        sum += volumeOf(amount->middle(), *findUnit(symbol, system)).millilitres();
    }
    return sum;
}

}  // namespace

TEST_CASE("a volume is written with the fewest tools that hold it", "[quantity]") {
    // 5/16 of a cup of 16 tablespoons.
    CHECK(written(cups(0.3125)).text() == "5 tbsp");
    CHECK(written(cups(0.3125)).relativeError == 0);
    CHECK(written(cups(0.25)).text() == "1/4 cup");
    CHECK(written(cups(1.5)).text() == "1 1/2 cups");
    CHECK(written(cups(1.5)).signText() == "1½ cups");
    CHECK(written(cups(13.0 / 16)).text() == "3/4 cup plus 1 tbsp");
    CHECK(written(cups(1.0 / 48)).text() == "1 tsp");
    CHECK(written(cups(1.0 / 16)).text() == "1 tbsp");
    CHECK(written(cups(4.0 / 48)).text() == "1 tbsp plus 1 tsp");
    const Volume odd = cups(2.0 + 3.0 / 16 + 1.0 / 96);
    CHECK(written(odd, 0.001).text() == "2 cups plus 3 tbsp plus 1/2 tsp");
    CHECK(written(odd).text() == "2 cups plus 3 tbsp");
}

TEST_CASE("a wider tolerance takes fewer tools, and the error is told", "[quantity]") {
    const SpoonedVolume rough = written(cups(0.26), 0.05);
    CHECK(rough.text() == "1/4 cup");
    CHECK(rough.relativeError == Approx(0.25 / 0.26 - 1));
    CHECK(written(cups(0.26), 0.001).parts.size() > 1);
}

TEST_CASE("spoons and cups are those of the system", "[quantity]") {
    const Volume twenty = Volume::fromMillilitres(20);
    CHECK(written(twenty, 0.01, MeasureSystem::Australian).text() == "1 tbsp");
    CHECK(written(twenty, 0.01, MeasureSystem::Metric).text() == "1 tbsp plus 1 tsp");
    CHECK(written(Volume::fromMillilitres(500), 0.01, MeasureSystem::Metric).text() == "2 cups");
}

TEST_CASE("the error stated of a spooned volume is the error made", "[quantity]") {
    std::mt19937 random{2026};
    for (int i = 0; i < 4000; ++i) {
        const double unit = static_cast<double>(random()) / 4294967296.0;
        const double millilitres = std::pow(10.0, -1 + 5 * unit);
        const MeasureSystem system = kSystems[random() % std::size(kSystems)];
        const double tolerance = random() % 2 == 0 ? 0.02 : 0.05;
        const SpoonedVolume spooned =
            written(Volume::fromMillilitres(millilitres), tolerance, system);
        CAPTURE(millilitres, spooned.text());
        const double back = readBack(spooned.text(), system);
        CHECK(back == Approx(spooned.volume().millilitres()).epsilon(1e-13));
        CHECK(readBack(spooned.signText(), system) == back);
        CHECK(back == Approx(millilitres * (1 + spooned.relativeError)).epsilon(1e-11));
        // Three tools come within the tolerance, or within half a step of a quarter teaspoon.
        const double step_ml = volumeOf(0.25, *findUnit("tsp", system)).millilitres();
        const double off_ml = std::fabs(spooned.relativeError) * millilitres;
        if (millilitres >= 1)
            CHECK(
                (off_ml <= step_ml / 2 * 1.0001 || std::fabs(spooned.relativeError) <= tolerance));
        CHECK(spooned.parts.size() <= 3);
    }
}

TEST_CASE("a single kitchen amount is written without an error", "[quantity]") {
    for (const MeasureSystem system : kSystems)
        for (const char* amount : {"1/4", "1/3", "1/2", "2/3", "3/4", "1", "1 1/3", "2 3/4", "7"}) {
            CAPTURE(amount, nameOf(system));
            const SpoonedVolume spooned =
                written(cups(readAmount(amount)->middle(), system), 0.001, system);
            CHECK(spooned.relativeError == 0);
            CHECK(spooned.parts.size() == 1);
        }
}

TEST_CASE("no volume has no spoon", "[quantity]") {
    for (const double millilitres : {0.0, -5.0, std::nan(""), HUGE_VAL})
        CHECK_FALSE(
            writeMeasure(Volume::fromMillilitres(millilitres), MeasureSystem::Metric, 0.01));
    CHECK(written(Volume::fromMillilitres(0.01)).text() == "1/8 tsp");
}
