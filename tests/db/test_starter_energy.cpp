#include <catch2/catch.hpp>
#include <map>

#include "core/quantity/decimal.h"
#include "starter.h"

using namespace nettare;

namespace {

constexpr double kAlcoholKcalPerG = 6.93;  // SR28 documentation, energy from alcohol
constexpr double kToleranceKcal = 1.0;

/// Energy from the food's own factors; nothing where one of the three is not published.
std::optional<double> kcalFromFactors(const TableFood& food) {
    const ConversionFactors& factors = food.factors;
    if (!factors.protein || !factors.fat || !factors.carbohydrate) return std::nullopt;
    const auto grams = [&](Component c) { return food.profile[c].value_or(0); };
    return grams(Component::PROCNT) * *factors.protein + grams(Component::FAT) * *factors.fat +
           grams(Component::CHOCDF) * *factors.carbohydrate +
           grams(Component::ALC) * kAlcoholKcalPerG;
}

std::map<std::string, double> listedExceptions() {
    std::map<std::string, double> kcalByNumber;
    for (const auto& row : starterCases("energy_exceptions.csv")) {
        REQUIRE(row.size() == 3);
        CHECK(row[2].size() > 20);  // each gives its reason
        kcalByNumber[row[0]] = Decimal::read(row[1])->value();
    }
    return kcalByNumber;
}

}  // namespace

TEST_CASE("published energies follow from the food's own factors, or are listed with the reason",
          "[starter]") {
    const FoodTable table = openStarter();
    const std::map<std::string, double> exceptions = listedExceptions();
    int withFactors = 0;
    int fitting = 0;
    for (const std::string& number : starterNumbers()) {
        const TableFood food = foodIn(table, number);
        const auto computed = kcalFromFactors(food);
        if (!computed) continue;
        ++withFactors;
        const double published = *food.profile[Component::ENERC_KCAL];
        const double difference = *computed - published;
        const bool fits = difference <= kToleranceKcal && difference >= -kToleranceKcal;
        INFO(number << " " << food.name << ": " << published << " against " << *computed);
        CHECK(fits != exceptions.contains(number));
        if (const auto listed = exceptions.find(number); listed != exceptions.end())
            CHECK(listed->second == published);
        fitting += fits ? 1 : 0;
    }
    CHECK(withFactors == 511);
    CHECK(withFactors - fitting == static_cast<int>(exceptions.size()));
    CHECK(fitting * 100 >= withFactors * 98);
}
