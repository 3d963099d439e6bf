#include <catch2/catch.hpp>
#include <cmath>
#include <functional>

#include "core/nutrition/figures.h"
#include "random_recipe.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

constexpr int kRecipes = 1000;

/// Nothing where the recipe has no figures.
std::optional<Served> servedOf(const Kitchen& kitchen) {
    try {
        return Served{kitchen};
    } catch (const std::runtime_error&) {
        return std::nullopt;
    }
}

/// Recipes that have figures, with those figures.
class RandomDishes {
public:
    explicit RandomDishes(std::mt19937::result_type seed) : recipes_{seed} {}

    std::pair<Kitchen, Served> next() {
        while (true) {
            Kitchen kitchen = recipes_.next();
            if (auto served = servedOf(kitchen)) return {kitchen, std::move(*served)};
            ++without_;
        }
    }
    [[nodiscard]] int without() const { return without_; }

private:
    RandomRecipes recipes_;
    int without_ = 0;
};

bool sameDigits(const Figure& a, const Figure& b) {
    return a.value == b.value && a.u == b.u && a.freedom == b.freedom && a.atLeast == b.atLeast &&
           a.atMost == b.atMost && a.knownShare == b.knownShare;
}

bool sameDigits(const Served& one, const Served& other) {
    for (const Basis basis : {Basis::Piece, Basis::Portion, Basis::Hundred, Basis::Batch}) {
        const auto a = figuresPer(basis, one.dossier, one.cooked);
        const auto b = figuresPer(basis, other.dossier, other.cooked);
        for (std::size_t k = 0; k < kComponentCount; ++k)
            if (!sameDigits(a->figures[k], b->figures[k])) return false;
    }
    return true;
}

bool near(double a, double b) {
    if (std::isinf(a) || std::isinf(b)) return a == b;
    return std::fabs(a - b) <= 1e-9 * std::max(std::fabs(a), std::fabs(b)) + 1e-12;
}

bool near(const std::optional<double>& a, const std::optional<double>& b) {
    return a.has_value() == b.has_value() && (!a || near(*a, *b));
}

/// Where a weight cancels, what is left of u is rounding of doubles, and its freedom means nothing.
bool sameUncertainty(const Figure& a, const Figure& b) {
    const double nothing = 1e-9 * std::fabs(a.value);
    if (a.u < nothing && b.u < nothing) return true;
    return near(a.u, b.u) && near(a.freedom, b.freedom);
}

/// The first figure that is another one; empty where all agree. Whether u has to agree as well.
std::string firstDifference(const Served& one, const Served& other, bool uncertainty) {
    for (const Basis basis : {Basis::Piece, Basis::Hundred, Basis::Batch}) {
        const auto a = figuresPer(basis, one.dossier, one.cooked);
        const auto b = figuresPer(basis, other.dossier, other.cooked);
        if (a.has_value() != b.has_value()) return "one of them has no figures";
        if (!a) continue;
        for (std::size_t k = 0; k < kComponentCount; ++k) {
            const Figure& x = a->figures[k];
            const Figure& y = b->figures[k];
            const bool same = near(x.value, y.value) && near(x.atLeast, y.atLeast) &&
                              near(x.atMost, y.atMost) && near(x.knownShare, y.knownShare);
            if (!same || (uncertainty && !sameUncertainty(x, y)))
                return std::string{factsOf(x.component).tagname} + " per " +
                       std::string{nameOf(basis)};
        }
    }
    return {};
}

bool differs(const Served& served, const Kitchen& other, bool uncertainty) {
    const auto changed = servedOf(other);
    return !changed || !firstDifference(served, *changed, uncertainty).empty();
}

/// The energy as it would come out summed in the order of the document.
double carelessEnergy(const Served& served) {
    double sum = 0;
    for (std::size_t i = 0; i < served.cooked.lines.size(); ++i)
        if (const auto* food = std::get_if<FoodIndex>(&served.dossier.main().lines[i].what))
            sum += served.cooked.lines[i].eaten.value() *
                   served.cooked.compositions[food->index][Component::ENERC_KCAL].perGram;
    return sum;
}

/// The first line that fits; nothing where none does.
std::optional<std::size_t> lineWhere(const Served& served,
                                     const std::function<bool(std::size_t)>& fits) {
    for (std::size_t i = 0; i < served.cooked.lines.size(); ++i)
        if (!served.cooked.lines[i].ways.ways.empty() && fits(i)) return i;
    return std::nullopt;
}

/// A line whose parts share every source, or whose parts' own scatter adds up to that of the whole.
std::optional<std::size_t> divisible(const Served& served) {
    return lineWhere(served, [&](std::size_t i) {
        const Line& line = served.dossier.main().lines[i];
        const OpenWay& way = served.way(i);
        return way.way != Way::Assumed && !way.sizeNotSaid && !line.toTaste &&
               !line.amount.isRange() && served.cooked.lines[i].counting != LineCounting::Between &&
               line.amount.text() != "2-3";
    });
}

std::optional<std::size_t> inCups(const Served& served) {
    return lineWhere(served, [&](std::size_t i) {
        const Unit* unit = served.dossier.main().lines[i].unit;
        const Way way = served.way(i).way;
        return unit != nullptr && unit->symbol == "cup" &&
               (way == Way::Density || way == Way::Label);
    });
}

std::optional<std::size_t> inPounds(const Served& served) {
    return lineWhere(served, [&](std::size_t i) {
        const Unit* unit = served.dossier.main().lines[i].unit;
        return unit != nullptr && unit->symbol == "lb";
    });
}

}  // namespace

TEST_CASE("a thousand recipes keep every digit when their lines move", "[nutrition]") {
    RandomDishes dishes{20261126};
    int careless = 0;
    for (int i = 0; i < kRecipes; ++i) {
        CAPTURE(i);
        const auto [kitchen, served] = dishes.next();
        const Served moved{withLinesMoved(kitchen, static_cast<std::uint32_t>(i))};
        REQUIRE(sameDigits(served, moved));
        careless += carelessEnergy(served) != carelessEnergy(moved) ? 1 : 0;
    }
    // Sums in the order of the document would not.
    CHECK(careless > 100);
    // Most of what is drawn has figures.
    CHECK(dishes.without() < kRecipes);
}

TEST_CASE("a line in two parts with the same source changes nothing", "[nutrition]") {
    RandomDishes dishes{4711};
    int wrong = 0;
    for (int i = 0; i < kRecipes;) {
        const auto [kitchen, served] = dishes.next();
        const auto line = divisible(served);
        if (!line) continue;
        CAPTURE(i, *line);
        REQUIRE_FALSE(differs(served, withLineSplit(kitchen, *line), true));
        // Parts that are an eighth too little are noticed, unless the line does not count.
        if (i % 10 == 0) wrong += differs(served, withLineSplit(kitchen, *line, 5), true) ? 1 : 0;
        ++i;
    }
    CHECK(wrong > 90);
}

TEST_CASE("a cup is sixteen tablespoons where the way is a density or a label", "[nutrition]") {
    RandomDishes dishes{815};
    for (int i = 0; i < kRecipes / 10;) {
        const auto [kitchen, served] = dishes.next();
        const auto line = inCups(served);
        if (!line) continue;
        CAPTURE(i, *line);
        REQUIRE_FALSE(differs(served, withUnitRenamed(kitchen, *line, "tbsp", 16), true));
        if (!isLeftOut(served.cooked.lines[*line].counting))
            CHECK(differs(served, withUnitRenamed(kitchen, *line, "tbsp", 15), true));
        ++i;
    }
}

// Values only: "1 lb" was written to a pound, "16 oz" to an ounce, and that is their uncertainty.
TEST_CASE("a pound is sixteen ounces", "[nutrition]") {
    RandomDishes dishes{16};
    for (int i = 0; i < kRecipes / 10;) {
        const auto [kitchen, served] = dishes.next();
        const auto line = inPounds(served);
        if (!line) continue;
        CAPTURE(i, *line);
        REQUIRE_FALSE(differs(served, withUnitRenamed(kitchen, *line, "oz", 16), false));
        if (!isLeftOut(served.cooked.lines[*line].counting))
            CHECK(differs(served, withUnitRenamed(kitchen, *line, "oz", 15), false));
        ++i;
    }
}
