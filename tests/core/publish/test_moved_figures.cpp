#include "core/publish/moved_figures.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>
#include <set>
#include <tuple>

#include "core/label/label_values.h"
#include "core/label/us_printed_interval.h"
#include "core/label/us_rounding.h"
#include "kitchen.h"

using namespace kitchen;

namespace {

using enum Component;
using Places = std::set<std::tuple<Basis, bool, Component>>;

/// Grams of yogurt in the dish, of the dish when cooked, and of a serving of yogurt.
constexpr double kEaten = 300;
constexpr double kDishGrams = 285;
constexpr double kServing = 170;

/// Every line that a panel needs, so that a dish of nothing else prints one.
const std::vector<std::pair<Component, std::string>> kTub{
    {ENERC_KCAL, "170"}, {FAT, "9"},    {FASAT, "6"}, {FATRN, "0"}, {CHOLE, "25"},
    {NA, "60"},          {CHOCDF, "7"}, {FIBTG, "2"}, {SUGAR, "6"}, {SUGAD, "2"},
    {PROCNT, "15"},      {VITD, "1.2"}, {CA, "190"},  {FE, "0.4"},  {K, "240"}};

TableFood yogurtOf(const std::vector<std::pair<Component, std::string>>& lines) {
    LabelFacts label;
    label.servingSize = Decimal{170, 0};
    for (const auto& [component, printed] : lines) label.amounts.push_back({component, printed});
    TableFood food = row("90001", "thick yogurt");
    food.profile = labelProfile(label);
    food.label = std::move(label);
    return food;
}

Kitchen dishOf(const TableFood& food) {
    Kitchen kitchen;
    kitchen.row("yogurt", food)
        .line(R"({"id":"yogurt","amount":"300","unit":"g","food":"yogurt"})")
        .reading("dish", "285", "", "cooked")
        .json("cooked", R"({"readings":["dish"]})");
    return kitchen;
}

std::vector<MovedFigure> movedBetween(const TableFood& before, const TableFood& after) {
    return Served::orThrow(movedFigures(*dishOf(before).dossier(), *dishOf(after).dossier()));
}

Places placesOf(const std::vector<MovedFigure>& moved) {
    Places places;
    for (const MovedFigure& figure : moved)
        places.insert({figure.basis, figure.onPanel, figure.component});
    return places;
}

/// Grams of yogurt in what the figures are per: 10 pieces, portions of 2.
double gramsIn(Basis basis) {
    if (basis == Basis::Piece) return kEaten / 10;
    return basis == Basis::Portion ? kEaten / 5 : 100 * kEaten / kDishGrams;
}

double stepOf(Component component) {
    return std::pow(10.0, -factsOf(component).decimals);
}

/// By hand: how far half a step about the print goes, and what the law lets the panel's print be.
Places expectedMoves(Component component, double before, double after) {
    Places places;
    for (const Basis basis : {Basis::Piece, Basis::Portion, Basis::Hundred}) {
        const double step = stepOf(component);
        const double was = before / kServing * gramsIn(basis);
        const double is = after / kServing * gramsIn(basis);
        const double print = std::floor(was / step + 0.5 + 1e-9) * step;
        if (is < print - step / 2 - 1e-9 || is >= print + step / 2 - 1e-9)
            places.insert({basis, false, component});
        if (basis != Basis::Portion) continue;
        const auto within = *usPrintedInterval(component, *usAmountText(component, was));
        if (!within.contains(Decimal::fromDouble(is))) places.insert({basis, true, component});
    }
    return places;
}

}  // namespace

TEST_CASE("a new pack that prints the same moves no figure", "[publish][label]") {
    CHECK(movedBetween(yogurtOf(kTub), yogurtOf(kTub)).empty());
}

TEST_CASE("a label printed otherwise moves what leaves its own rounding, and nothing else",
          "[publish][label]") {
    std::mt19937 random{20261126};
    int moves = 0, stays = 0;
    for (int trial = 0; trial < 400; ++trial) {
        auto lines = kTub;
        auto& [component, printed] = lines[1 + random() % (lines.size() - 1)];
        const double before = Decimal::read(printed)->value();
        // Up to two of the steps that the law prints this line in.
        const double wanted = before * (0.8 + static_cast<double>(random() % 400) / 1000);
        printed = *usAmountText(component, wanted);
        const auto read = Decimal::read(printed);
        if (!read) continue;
        INFO(factsOf(component).tagname << " " << before << " to " << printed);
        auto moved = movedBetween(yogurtOf(kTub), yogurtOf(lines));
        // What is missing is bounded by the rest, and so are its bounds moved by it.
        const auto isBound = [](const MovedFigure& figure) {
            return figure.before.starts_with("at least");
        };
        std::erase_if(moved, isBound);
        const Places expected = expectedMoves(component, before, read->value());
        CHECK(placesOf(moved) == expected);
        (expected.empty() ? stays : moves) += 1;
        for (const MovedFigure& figure : moved) {
            CHECK(figure.valueBefore == Approx(before / kServing * gramsIn(figure.basis)));
            CHECK(figure.valueAfter == Approx(read->value() / kServing * gramsIn(figure.basis)));
        }
    }
    CHECK(moves > 50);
    CHECK(stays > 50);
}

TEST_CASE("energy moves in both of its units, on the page and on the panel", "[publish][label]") {
    auto lines = kTub;
    lines[0].second = "180";
    const auto moved = movedBetween(yogurtOf(kTub), yogurtOf(lines));
    // 60 g of 170: 60 and 63.5 kcal a portion; 60 stands for 55 to 65 on a panel.
    REQUIRE(placesOf(moved).contains({Basis::Portion, false, ENERC_KCAL}));
    CHECK(placesOf(moved).contains({Basis::Portion, false, ENERC_KJ}));
    CHECK_FALSE(placesOf(moved).contains({Basis::Portion, true, ENERC_KCAL}));
    for (const MovedFigure& figure : moved)
        if (figure.basis == Basis::Portion && figure.component == ENERC_KCAL) {
            CHECK(figure.before == "60 kcal");
            CHECK(figure.after == "64 kcal");
        }
    lines[0].second = "190";
    const auto more = movedBetween(yogurtOf(kTub), yogurtOf(lines));
    for (const MovedFigure& figure : more)
        if (figure.onPanel) {
            CHECK(figure.before == "60");
            CHECK(figure.after == "70");
        }
    CHECK(placesOf(more).contains({Basis::Portion, true, ENERC_KCAL}));
}

TEST_CASE("what a new pack no longer prints moves to its bounds", "[publish][label]") {
    auto lines = kTub;
    std::erase_if(lines, [](const auto& line) { return line.first == CA; });
    const auto moved = movedBetween(yogurtOf(kTub), yogurtOf(lines));
    REQUIRE(placesOf(moved).contains({Basis::Portion, false, CA}));
    for (const MovedFigure& figure : moved) {
        CHECK(figure.component == CA);
        CHECK(figure.after == "at least 0 mg");
    }
    CHECK(placesOf(moved).contains({Basis::Portion, true, CA}));
}

TEST_CASE("a dish that prints no panel moves on its page alone", "[publish][label]") {
    const std::vector<std::pair<Component, std::string>> few{{ENERC_KCAL, "170"}, {FAT, "9"}};
    const std::vector<std::pair<Component, std::string>> more{{ENERC_KCAL, "230"}, {FAT, "16"}};
    const auto moved = movedBetween(yogurtOf(few), yogurtOf(more));
    CHECK_FALSE(moved.empty());
    for (const MovedFigure& figure : moved) CHECK_FALSE(figure.onPanel);
}

TEST_CASE("what moved is called by what it is per", "[publish][label]") {
    const auto dossier = *dishOf(yogurtOf(kTub)).dossier();
    MovedFigure moved;
    moved.basis = Basis::Piece;
    CHECK(placeText(moved, dossier.main()) == "per piece");
    moved.basis = Basis::Hundred;
    CHECK(placeText(moved, dossier.main()) == "per 100 g");
    moved.basis = Basis::Portion;
    CHECK(placeText(moved, dossier.main()) == "per portion");
    moved.onPanel = true;
    CHECK(placeText(moved, dossier.main()) == "on the panel");
}
