#include <catch2/catch.hpp>

#include "core/label/label_values.h"
#include "core/publish/label_sentence.h"

#include "honest_labels.h"

namespace nettare {

namespace {

constexpr int kHonestLabels = 1000;

std::string textOfLabel(const LabelFacts& label) {
    std::string text = label.servingSize ? label.servingSize->text() + " g: " : "";
    for (const LabelAmount& amount : label.amounts)
        text += std::string{tagnameOf(amount.line)} + " " + amount.printed + ", ";
    return text;
}

void checkHonest(const LabelFacts& label, const FoodMakeup& food) {
    const auto findings = checkLabel(label);
    if (findings.empty()) return;
    FAIL_CHECK(food.name << "\n"
                         << textOfLabel(label) << "\n"
                         << findingSentence(label, findings.front()));
}

}  // namespace

TEST_CASE("a thousand labels composed honestly by each lawful method have no finding", "[label]") {
    std::mt19937 random{20161126};
    for (int method = 0; method < kEnergyMethodCount; ++method)
        for (int i = 0; i < kHonestLabels; ++i) {
            const FoodMakeup food = randomMakeup(random);
            const double grams = 5 + static_cast<double>(random() % 2500) / 10;
            checkHonest(honestUsLabel(food, grams, static_cast<EnergyMethod>(method), random),
                        food);
        }
    for (int i = 0; i < 2 * kHonestLabels; ++i) {
        const FoodMakeup food = randomMakeup(random);
        checkHonest(honestEuLabel(food, i % 2 == 0, random), food);
    }
    INFO(starterMakeups().size() << " rows");
    CHECK(starterMakeups().size() > 300);
}

}  // namespace nettare
