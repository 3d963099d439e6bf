#include "core/publish/compared_figures.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "compared_kitchens.h"

using namespace kitchen;

namespace {

/// Normal numbers by the polar method from raw bits, which are the same everywhere.
class Normal {
public:
    explicit Normal(std::mt19937::result_type seed) : random_{seed} {}

    double operator()() {
        for (;;) {
            const double x = uniform();
            const double y = uniform();
            const double s = x * x + y * y;
            if (s > 0 && s < 1) return x * std::sqrt(-2 * std::log(s) / s);
        }
    }

private:
    double uniform() { return 2 * (static_cast<double>(random_()) / 4294967296.0) - 1; }
    std::mt19937 random_;
};

FigureDifference energy(const Kitchen& before, const Kitchen& after) {
    return comparedKitchens(before, after).batchEnergy;
}

}  // namespace

TEST_CASE("one more spoon of oil is as uncertain as the one spoon", "[publish]") {
    // 13.5 g a tablespoon, assumed within 7 %, 8.84 kcal a gram; sugar and fennel cancel.
    const FigureDifference found = energy(dish("3", "7"), dish("4", "7"));
    CHECK(found.difference == Approx(13.5 * 8.84));
    CHECK(found.u == Approx(0.07 * 13.5 * 8.84));
    CHECK(found.freedom == Approx(8));
    CHECK(found.kind == DifferenceKind::Real);
    // Each side alone is much less sure.
    CHECK(found.before.u > 2.9 * found.u);
}

TEST_CASE("the uncertainty of a difference agrees with drawing both states together", "[publish]") {
    const FigureDifference found = energy(dish("3", "2"), dish("4", "5"));
    Normal normal{20260516};
    constexpr int kDraws = 200'000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < kDraws; ++i) {
        const double spoon = 13.5 * (1 + 0.07 * normal());
        // Sugar: 4.2 g a teaspoon, s = 0.3 of 10; two spoons in one batch, five in another.
        const double mean = 4.2 + 0.3 / std::sqrt(10.0) * normal();
        double more = 0;
        for (int k = 0; k < 5; ++k) more += mean + 0.3 * normal();
        for (int k = 0; k < 2; ++k) more -= mean + 0.3 * normal();
        const double difference = 8.84 * spoon + 3.87 * more;
        sum += difference;
        squares += difference * difference;
    }
    const double mean = sum / kDraws;
    CHECK(found.difference == Approx(mean).epsilon(1e-3));
    CHECK(found.u == Approx(std::sqrt(squares / kDraws - mean * mean)).epsilon(0.01));
}

TEST_CASE("a series that got one reading more shares its earlier ones", "[publish]") {
    const auto bulbs = [](int readings) {
        Kitchen kitchen;
        std::string ids;
        for (int i = 0; i < readings; ++i) {
            const std::string id = "bulb-" + std::to_string(i);
            kitchen.reading(id, std::to_string(220 + 7 * (i % 3)));
            ids += (i > 0 ? ",\"" : "\"") + id + "\"";
        }
        kitchen.append("series", R"({"id":"bulbs","name":"bulbs","kind":"per piece",)"
                                 R"("of":"bulb","readings":[)" +
                                     ids + "]}");
        kitchen.line(R"({"id":"fennel","amount":"2","piece":"bulb","food":"fennel",)"
                     R"("series":{"id":"bulbs","use":"others"}})");
        return kitchen;
    };
    const FigureDifference found = energy(bulbs(6), bulbs(7));
    // Of n readings and two bulbs 4 s^2 / n is of the mean and 2 s^2 of the bulbs. The means have
    // the variance of the longer one in common, the bulbs of two batches nothing.
    const double apart = std::hypot(found.before.u, found.after.u);
    const double left = (4 + 4.0 / 6 - 4.0 / 7) / (4 + 4.0 / 6 + 4.0 / 7);
    CHECK(found.u == Approx(apart * std::sqrt(left)).epsilon(0.02));
}

TEST_CASE("a food of which another value is known is another source", "[publish]") {
    const auto stated = [](const std::string& kcal) {
        Kitchen kitchen;
        kitchen.append("foods", R"({"id":"own","name":"own","stated":[{"component":"ENERC_KCAL",)"
                                R"("per_100g":")" +
                                    kcal + R"(","within":"10","reason":"test"}]})");
        kitchen.line(R"({"id":"own","amount":"100.0","unit":"g","food":"own"})");
        return kitchen;
    };
    const FigureDifference same = energy(stated("200"), stated("200"));
    CHECK(same.u == 0);
    const FigureDifference other = energy(stated("200"), stated("210"));
    CHECK(other.u > 0.99 * std::hypot(10, 10) / std::sqrt(3.0));
    CHECK(other.kind == DifferenceKind::Within);
}

TEST_CASE("where a part is missing no difference can be told", "[publish]") {
    const Comparison comparison = comparedKitchens(dish("3", "7"), dish("4", "7"));
    const FigureDifference& calcium = comparison.figures[indexOf(Component::CA)];
    CHECK_FALSE(calcium.before.complete());
    CHECK(calcium.kind == DifferenceKind::NotComparable);
}
