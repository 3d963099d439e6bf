#include "app/compare/calm_difference.h"

#include <catch2/catch.hpp>

#include <random>

#include "core/quantity/decimal.h"

namespace nettare {

namespace {

/// What a reader takes "−10.6" or "+3" for.
double valueOf(std::string text) {
    const std::string minus = "−";
    if (text.starts_with(minus)) text.replace(0, minus.size(), "-");
    if (text.starts_with('+')) text.erase(0, 1);
    const auto read = Decimal::read(text);
    REQUIRE(read);
    return read->value();
}

}  // namespace

TEST_CASE("a difference takes one more decimal where its ends need it, and no more") {
    const DifferenceText garlic = calmDifference(0, 14.6, 7.3);
    CHECK(garlic.before == "14.6");
    CHECK(garlic.difference == "−7.3");
    const DifferenceText oil = calmDifference(1, 44.0317, 33.3763);
    CHECK(oil.before == "44.0");
    CHECK(oil.after == "33.4");
    CHECK(oil.difference == "−10.6");
}

TEST_CASE("whoever subtracts the ends finds the difference") {
    std::mt19937 random{20260411};
    for (int i = 0; i < 500; ++i) {
        const double before = static_cast<double>(random() % 1'000'000) / 997;
        const double after = static_cast<double>(random() % 1'000'000) / 991;
        const DifferenceText text = calmDifference(1, before, after);
        CHECK(valueOf(text.after) - valueOf(text.before) ==
              Approx(valueOf(text.difference)).margin(1e-6));
    }
}

}  // namespace nettare
