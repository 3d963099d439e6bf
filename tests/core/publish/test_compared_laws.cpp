#include <catch2/catch.hpp>
#include <cmath>

#include "compared_kitchens.h"
#include "core/nutrition/what_if.h"
#include "random_recipe.h"

using namespace kitchen;

// Laws of differences for any two recipes. Each checker names the first component that breaks its
// law.

namespace {

constexpr int kPairs = 300;

/// Recipes that have figures, as states.
class RandomStates {
public:
    explicit RandomStates(std::mt19937::result_type seed)
        : recipes_{seed, RandomRecipes::Draw::AllWays} {}

    std::pair<Kitchen, ServedState> next() {
        while (true) {
            Kitchen kitchen = recipes_.next();
            const auto dossier = kitchen.dossier();
            if (dossier && cook(*dossier)) {
                ServedState state{kitchen};
                return {std::move(kitchen), std::move(state)};
            }
        }
    }

private:
    RandomRecipes recipes_;
};

Figures perPiece(const ServedState& state) {
    return Served::orThrow(figuresPer(Basis::Piece, state.served.dossier, state.served.cooked));
}

PerComponent<FigureDifference> differences(const ServedState& before, const ServedState& after) {
    return comparedFigures(before.state(), perPiece(before), after.state(), perPiece(after));
}

std::string asymmetry(const PerComponent<FigureDifference>& forth,
                      const PerComponent<FigureDifference>& back) {
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        const FigureDifference& a = forth[k];
        const FigureDifference& b = back[k];
        const bool freedom = a.freedom == b.freedom;
        if (a.difference != -b.difference || a.u != b.u || !freedom || a.kind != b.kind)
            return std::string{allComponents()[k].tagname};
    }
    return {};
}

bool scatters(SourceKind kind) {
    return kind == SourceKind::SeriesScatter || kind == SourceKind::MeasureScatter ||
           kind == SourceKind::RatioScatter;
}

/// Part of the variance of a figure that is how its pieces scatter.
double scatterOf(std::size_t k, const ServedState& state) {
    double variance = 0;
    for (const Contribution& part : contributionsTo(
             allComponents()[k].component, perPiece(state).block, state.served.cooked.compositions))
        if (scatters(part.source.key.kind)) variance += part.share();
    return variance;
}

/// Anything but zero, give or take the scatter of `batches`.
std::string identityFlaw(const PerComponent<FigureDifference>& found, const ServedState& state,
                         int batches) {
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        const double scatter = std::sqrt(batches * scatterOf(k, state));
        if (found[k].difference != 0 || std::fabs(found[k].u - scatter) > 1e-9 * scatter)
            return std::string{allComponents()[k].tagname};
    }
    return {};
}

bool isWeighed(const ServedState& state) {
    const Recipe& recipe = state.served.dossier.main();
    bool weighed = !recipe.cooked.empty() || !recipe.residues.empty();
    for (const Line& line : recipe.lines) weighed = weighed || !line.weighed.empty();
    return weighed;
}

/// Twelve bulbs by a series of three.
Kitchen bulbsBySeries(const char* amount = "12") {
    Kitchen kitchen = Kitchen{}.reading("a", "220").reading("b", "234").reading("c", "251");
    kitchen.append("series", R"({"id":"s","name":"bulbs","kind":"per piece","of":"bulb",
        "readings":["a","b","c"]})");
    return kitchen.line(R"({"id":"f","piece":"bulb","food":"fennel",
        "series":{"id":"s","use":"others"},"amount":")" +
                        std::string{amount} + "\"}");
}

Kitchen asWeighed(Kitchen kitchen, const char* id) {
    kitchen.reading(id, "2700", "", "cooked");
    return kitchen.json("cooked", R"({"readings":[")" + std::string{id} + R"("]})");
}

}  // namespace

TEST_CASE("a difference has the same digits in both directions", "[publish]") {
    RandomStates states{810};
    int noticed = 0;
    for (int i = 0; i < kPairs; ++i) {
        CAPTURE(i);
        const auto [kitchen, before] = states.next();
        const auto [other, after] = states.next();
        const auto forth = differences(before, after);
        REQUIRE(asymmetry(forth, differences(after, before)).empty());
        noticed += asymmetry(forth, forth).empty() ? 0 : 1;
    }
    CHECK(noticed == kPairs);
}

TEST_CASE("a state beside itself differs by nothing but the scatter of two batches", "[publish]") {
    RandomStates states{820};
    int apart = 0;
    int noticed = 0;
    for (int i = 0; i < kPairs; ++i) {
        CAPTURE(i);
        const auto [kitchen, state] = states.next();
        const int batches = isWeighed(state) ? 0 : 2;
        const auto found = differences(state, state);
        REQUIRE(identityFlaw(found, state, batches).empty());
        apart += batches;
        noticed += identityFlaw(found, state, 2 - batches).empty() ? 0 : 1;
    }
    CHECK(apart > 20);
    CHECK(noticed > 20);
}

TEST_CASE("pieces of two batches scatter on their own", "[publish]") {
    const auto u = [](const Kitchen& before, const Kitchen& after) {
        return comparedKitchens(before, after).batchEnergy.u;
    };
    const Kitchen text = bulbsBySeries();
    const ServedState state{text};
    // s of three bulbs, twelve of them on each side, 0.31 kcal a gram; the mean is one.
    const double s = state.served.way(0).why.series->spread;
    CHECK(u(text, text) == Approx(std::sqrt(2 * 12.0) * s * 0.31));
    const Kitchen first = asWeighed(text, "first");
    CHECK(u(first, asWeighed(text, "second")) == Approx(std::sqrt(2 * 12.0) * s * 0.31));
    CHECK(u(first, first) == 0);
    CHECK(u(first, asWeighed(bulbsBySeries("13"), "first")) > std::sqrt(24.0) * s * 0.31);
}

TEST_CASE("an amount that is tried is of the batch that it changes", "[publish]") {
    Kitchen kitchen = bulbsBySeries();
    kitchen.line(R"({"id":"o","amount":"3","unit":"tbsp","food":"oil"})");
    const ServedState now{kitchen};
    const Dossier dossier = withChanges(now.served.dossier, {{1, 2}});
    for (const Meaning meaning : {Meaning::ThisBatch, Meaning::AnyPiece}) {
        const Cooked before = Served::orThrow(cook(now.served.dossier, meaning));
        const Cooked after = Served::orThrow(cook(dossier, meaning));
        const auto found = comparedFigures(
            {now.document, now.served.dossier, before},
            Served::orThrow(figuresPer(Basis::Batch, now.served.dossier, before)),
            {now.document, dossier, after},
            Served::orThrow(figuresPer(Basis::Batch, dossier, after)), Batches::One);
        // The bulbs stay what they are; the oil alone is another amount.
        CHECK(found[indexOf(Component::ENERC_KCAL)].u == Approx(0.07 * 3 * 13.5 * 8.84));
    }
}

TEST_CASE("a series that was weighed anew is another one", "[publish]") {
    Kitchen anew = Kitchen{}.reading("x", "220").reading("y", "234").reading("z", "251");
    anew.append("series", R"({"id":"s","name":"bulbs","kind":"per piece","of":"bulb",
        "readings":["x","y","z"]})");
    anew.line(R"({"id":"f","piece":"bulb","food":"fennel","series":{"id":"s","use":"others"},
        "amount":"12"})");
    const FigureDifference found = comparedKitchens(bulbsBySeries(), anew).batchEnergy;
    // The zero of the scale alone is common.
    const double apart = std::hypot(found.before.u, found.after.u);
    CHECK(found.u == Approx(apart).epsilon(0.001));
    CHECK(found.u < apart);
}

TEST_CASE("an indication that shows another weight is another one", "[publish]") {
    const auto weighed = [](const char* grams) {
        Kitchen kitchen = Kitchen{}.reading("r", grams);
        return kitchen.line(
            R"({"id":"f","amount":"1","piece":"lot","food":"fennel","weighed":["r"]})");
    };
    const double each = 0.31 / std::sqrt(12.0);
    CHECK(comparedKitchens(weighed("400"), weighed("400")).batchEnergy.u == 0);
    CHECK(comparedKitchens(weighed("400"), weighed("410")).batchEnergy.u ==
          Approx(std::sqrt(2.0) * each));
}

TEST_CASE("the share of any one piece is another one on each side", "[publish]") {
    const Kitchen kitchen = dish("3", "7");
    ServedState state{kitchen};
    state.served.cooked = Served::orThrow(cook(state.served.dossier, Meaning::AnyPiece));
    const auto found = differences(state, state);
    const FigureDifference& energy = found[indexOf(Component::ENERC_KCAL)];
    CHECK(energy.difference == 0);
    CHECK(energy.u == Approx(std::sqrt(2.0) * 0.14 * energy.before.value));
}
