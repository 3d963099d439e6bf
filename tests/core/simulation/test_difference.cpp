#include <catch2/catch.hpp>
#include <cmath>
#include <map>

#include "core/publish/compared_figures.h"
#include "core/simulation/draws.h"
#include "core/simulation/sum_tile.h"
#include "core/support/json.h"
#include "kitchen.h"

// The uncertainty of a difference against draws of both revisions in which what both have is drawn
// once. Recipe means, so that no piece and no lot of one cooking is in question.

using namespace nettare;
using enum nettare::Component;
using kitchen::Kitchen;

namespace {

constexpr std::size_t kTrials = 40'000;

struct Side {
    RecipeDocument document;
    Dossier dossier;
    Cooked cooked{};
    Figures figures{};
    FigurePlan plan{};

    [[nodiscard]] ComparedState state() const { return {document, dossier, cooked}; }
};

Side recipeSide(const Kitchen& kitchen, Basis basis, Component component) {
    Side side{*readRecipe(kitchen.document()), *kitchen.dossier()};
    side.cooked = *cook(side.dossier, Meaning::RecipeMean);
    side.figures = *figuresPer(basis, side.dossier, side.cooked);
    side.plan = planOf(component, side.figures, side.dossier, side.cooked);
    return side;
}

std::string nameOfDrawn(const Source& source, const Side& side) {
    std::string name = nameOf(source, side.dossier);
    if (source.key.kind == SourceKind::Composition) {
        const auto component = static_cast<Component>(source.key.second);
        const auto& amount = side.cooked.compositions[source.key.first][component];
        name += " of " + numberText(amount.perGram);
    }
    return name;
}

using Deviates = std::vector<double>;

/// Deviates of standard deviation 1, or 1 about a middle that is off, by the law of the source.
Deviates drawn(Draws& draws, const Source& source) {
    Deviates values(kTrials);
    if (source.law == Law::Normal) {
        draws.normals(values);
        return values;
    }
    draws.uniforms(values);
    const double width = std::sqrt(12 * (source.u * source.u - source.offset * source.offset));
    for (double& value : values) value = (source.offset + width * (value - 0.5)) / source.u;
    return values;
}

class SharedDraws {
public:
    SharedDraws(const Side& before, const Side& after) {
        for (const Side* side : {&before, &after})
            for (const auto& one : side->plan.sources) {
                const std::string name = nameOfDrawn(one.source, *side);
                const auto [found, fresh] = least_.emplace(name, one.source.u);
                if (fresh)
                    common_[name] = drawn(draws_, one.source);
                else
                    found->second = std::min(found->second, one.source.u);
            }
    }

    /// What two sides know of one source to a different degree is common up to the smaller u.
    std::vector<double> figuresOf(const Side& side) {
        SumTile tile{side.plan, kTrials};
        for (const auto& one : side.plan.sources) {
            const std::string name = nameOfDrawn(one.source, side);
            const double least = least_.at(name);
            const double rest = std::sqrt(one.source.u * one.source.u - least * least);
            Deviates deviations = common_.at(name);
            for (double& each : deviations) each *= least;
            if (rest > 0) {
                const Deviates own = drawn(draws_, one.source);
                for (std::size_t t = 0; t < kTrials; ++t) deviations[t] += rest * own[t];
            }
            tile.move(one, deviations);
        }
        std::vector<double> values(kTrials);
        tile.figures(values);
        return values;
    }

private:
    Draws draws_{20261126, 0};
    std::map<std::string, double> least_;
    std::map<std::string, Deviates> common_;
};

void checkDifference(const std::string& what, const Kitchen& older, const Kitchen& newer,
                     Basis basis, Component component) {
    CAPTURE(what);
    const Side before = recipeSide(older, basis, component);
    const Side after = recipeSide(newer, basis, component);
    const FigureDifference found = comparedFigures(before.state(), before.figures, after.state(),
                                                   after.figures)[indexOf(component)];
    SharedDraws draws{before, after};
    const std::vector<double> a = draws.figuresOf(before);
    const std::vector<double> b = draws.figuresOf(after);
    double squares = 0;
    for (std::size_t t = 0; t < kTrials; ++t) {
        const double off = b[t] - a[t] - found.difference;
        squares += off * off;
    }
    REQUIRE(found.u > 0);
    CHECK(std::sqrt(squares / kTrials) == Approx(found.u).epsilon(0.03));
}

Kitchen oneLine(const std::string& text) {
    return Kitchen{}.line(text);
}

Kitchen weighedOil(const std::string& id, const std::string& grams) {
    return Kitchen{}
        .reading(id, grams)
        .line(R"({"id":"o","amount":"1","piece":"lot","food":"oil","weighed":[")" + id + R"("]})")
        .line(R"({"id":"s","amount":"3","unit":"tsp","food":"sugar"})");
}

Kitchen pasteBySpoons(const std::string& spoons) {
    Kitchen kitchen;
    kitchen.append("foods", R"({"id":"paste","name":"paste","label":{"rules":"us",
        "serving_grams":"33","serving":{"amount":"2","unit":"tbsp"},"declares":[
        {"component":"ENERC_KCAL","printed":"70"},{"component":"FAT","printed":"4.5"}]}})");
    return kitchen.line(R"({"id":"p","amount":")" + spoons + R"(","unit":"tbsp","food":"paste"})")
        .line(R"({"id":"w","amount":"40.5","unit":"g","food":"paste"})");
}

Kitchen bulbsInSeries(const std::vector<std::string>& grams, const std::string& amount) {
    Kitchen kitchen;
    std::string ids;
    for (std::size_t i = 0; i < grams.size(); ++i) {
        kitchen.reading("b" + std::to_string(i), grams[i]);
        ids += (i == 0 ? "\"b" : ",\"b") + std::to_string(i) + "\"";
    }
    kitchen.append("series", R"({"id":"bulbs","name":"bulbs","kind":"per piece","of":"bulb",)"
                             R"("readings":[)" +
                                 ids + "]}");
    return kitchen.line(R"({"id":"f","amount":")" + amount +
                        R"(","piece":"bulb","food":"fennel","series":{"id":"bulbs",)"
                        R"("use":"others"}})");
}

Kitchen cookedDish(const std::string& oil, const std::string& cooked) {
    Kitchen kitchen = bulbsInSeries({"210", "240", "251", "226"}, "4");
    kitchen.reading("done-" + cooked, cooked, "", "cooked").reading("pot", "12", "", "residue");
    kitchen.line(R"({"id":"o","amount":")" + oil + R"(","unit":"tbsp","food":"oil"})");
    kitchen.json("residues", R"([{"mixture":["f","o"],"readings":["pot"]}])");
    return kitchen.json("cooked", R"({"readings":["done-)" + cooked + R"("]})");
}

}  // namespace

TEST_CASE("the uncertainty of a difference is that of draws in which both share what they share",
          "[simulation]") {
    checkDifference("another weighing of the oil", weighedOil("first", "20"),
                    weighedOil("second", "23"), Basis::Batch, ENERC_KCAL);
    checkDifference(
        "the same weighing, more sugar", weighedOil("first", "20"),
        weighedOil("first", "20").line(R"({"id":"more","amount":"2","unit":"tsp","food":"sugar"})"),
        Basis::Piece, SUGAR);
    checkDifference("three spoons instead of two",
                    oneLine(R"({"id":"o","amount":"2","unit":"tbsp","food":"oil"})"),
                    oneLine(R"({"id":"o","amount":"3","unit":"tbsp","food":"oil"})"),
                    Basis::Portion, FAT);
    checkDifference("three spoons of a labelled food", pasteBySpoons("2"), pasteBySpoons("3"),
                    Basis::Batch, ENERC_KCAL);
    checkDifference("six bulbs instead of four", bulbsInSeries({"210", "240", "251"}, "4"),
                    bulbsInSeries({"210", "240", "251"}, "6"), Basis::Batch, NA);
    checkDifference("one more reading of the bulbs", bulbsInSeries({"210", "240", "251"}, "4"),
                    bulbsInSeries({"210", "240", "251", "226"}, "4"), Basis::Batch, NA);
    checkDifference("less oil, cooked longer", cookedDish("4", "900"), cookedDish("3", "840"),
                    Basis::Hundred, ENERC_KCAL);
    checkDifference("less oil, per piece", cookedDish("4", "900"), cookedDish("3", "900"),
                    Basis::Piece, FAT);
}
