#include <catch2/catch.hpp>

#include <map>

#include "core/label/label_interval.h"
#include "core/label/label_values.h"

#include "honest_labels.h"

namespace nettare {

namespace {

/// What a label says of each component per 100 g, as intervals.
std::map<Component, Interval> per100gOf(const LabelFacts& label) {
    Interval grams{100, 100};
    if (label.per == LabelPer::Serving)
        grams = servingInterval(label.rules, *label.servingSize).closed();
    const auto values = labelValues(label);
    REQUIRE(values);
    std::map<Component, Interval> per100g;
    for (const LabelValue& value : *values)
        per100g[value.component] = {value.low * 100 / grams.high, value.high * 100 / grams.low};
    return per100g;
}

/// Energy is left out: each side has methods of its own.
constexpr Component kSharedComponents[] = {Component::FAT,   Component::FASAT, Component::CHOCDF,
                                           Component::FIBTG, Component::SUGAR, Component::PROCNT,
                                           Component::NA};

}  // namespace

TEST_CASE("labels of one food under both rules overlap in every component they share", "[label]") {
    std::mt19937 random{1169};
    std::map<Component, int> compared;
    for (int i = 0; i < 2000; ++i) {
        const FoodMakeup food = randomMakeup(random);
        const double grams = 5 + static_cast<double>(random() % 2500) / 10;
        const bool withFibre = i % 2 == 0;
        const auto us = per100gOf(honestUsLabel(food, grams, EnergyMethod::FourFourNine, random));
        const LabelFacts european = honestEuLabel(food, withFibre, random);
        const auto eu = per100gOf(european);
        // Carbohydrate with fibre and without are two things: one alone does not give the other.
        CHECK(labelGives(european, Component::CHOCDF) == withFibre);
        for (const Component component : kSharedComponents) {
            if (!us.contains(component) || !eu.contains(component)) continue;
            ++compared[component];
            CAPTURE(food.name, grams, factsOf(component).tagname);
            CAPTURE(us.at(component).low, us.at(component).high);
            CAPTURE(eu.at(component).low, eu.at(component).high);
            CHECK(us.at(component).low <= eu.at(component).high + 1e-9);
            CHECK(eu.at(component).low <= us.at(component).high + 1e-9);
        }
    }
    for (const Component component : kSharedComponents) CHECK(compared[component] >= 700);
}

}  // namespace nettare
