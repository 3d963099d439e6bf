#include "lawful_prints.h"

#include "core/label/us_daily_values.h"

#include <cmath>

namespace nettare {

namespace {

using Texts = std::set<std::string>;

std::string thousandthsText(std::int64_t thousandths) {
    std::string text = std::to_string(thousandths / 1000);
    std::string decimals = std::to_string(1000 + thousandths % 1000).substr(1);
    while (!decimals.empty() && decimals.back() == '0') decimals.pop_back();
    return decimals.empty() ? text : text + "." + decimals;
}

/// The nearest multiple of a step, or both in a tie.
Texts nearestTexts(std::int64_t amount, std::int64_t step) {
    const std::int64_t below = amount / step * step;
    const std::int64_t rest = amount - below;
    Texts texts;
    if (2 * rest <= step) texts.insert(thousandthsText(below));
    if (2 * rest >= step) texts.insert(thousandthsText(below + step));
    return texts;
}

/// (c)(1)
Texts lawfulCalories(std::int64_t amount) {
    Texts texts = nearestTexts(amount, amount <= 50'000 ? 5'000 : 10'000);
    if (amount < 5'000) texts.insert("0");
    return texts;
}

/// (c)(2)
Texts lawfulFats(std::int64_t amount) {
    if (amount < 500) return {"0"};
    return nearestTexts(amount, amount < 5'000 ? 500 : 1'000);
}

/// (c)(3)
Texts lawfulCholesterol(std::int64_t amount) {
    if (amount < 2'000) return {"0"};
    Texts texts = nearestTexts(amount, 5'000);
    texts.erase("0");
    if (amount <= 5'000) texts.insert("less than 5");
    return texts;
}

/// (c)(4)
Texts lawfulSodium(std::int64_t amount) {
    if (amount < 5'000) return {"0"};
    return nearestTexts(amount, amount <= 140'000 ? 5'000 : 10'000);
}

/// (c)(6), (c)(7)
Texts lawfulWholeGrams(std::int64_t amount) {
    Texts texts;
    if (amount >= 500) texts = nearestTexts(amount, 1'000);
    texts.erase("0");
    if (amount < 500) texts.insert("0");
    if (amount < 1'000) texts.insert("less than 1");
    return texts;
}

/// (c)(8)(iii): what is below 2 % of the RDI may be declared by a zero.
Texts lawfulZero(double intake, std::int64_t thousandths) {
    return thousandths < std::llround(intake * 20) ? Texts{"0"} : Texts{};
}

/// (c)(8)(ii) and FDA's draft guidance: RDI below 25, 250, 500 and above; copper to 0.01.
Texts lawfulVitamins(Component component, std::int64_t amount) {
    const double intake = usDailyValue(component)->amount.value();
    if (component == Component::CU || intake < 25) {
        Texts texts = nearestTexts(amount, component == Component::CU ? 10 : 100);
        texts.merge(nearestTexts(amount, 1'000));
        if (component == Component::CU) texts.merge(nearestTexts(amount, 100));
        texts.merge(lawfulZero(intake, amount));
        return texts;
    }
    Texts texts = nearestTexts(amount, intake < 250 ? 1'000 : intake < 500 ? 5'000 : 10'000);
    texts.merge(lawfulZero(intake, amount));
    return texts;
}

}  // namespace

Texts lawfulPrints(Component component, std::int64_t thousandths) {
    switch (component) {
        case Component::ENERC_KCAL:
            return lawfulCalories(thousandths);
        case Component::FAT:
        case Component::FASAT:
        case Component::FATRN:
        case Component::FAMS:
        case Component::FAPU:
            return lawfulFats(thousandths);
        case Component::CHOLE:
            return lawfulCholesterol(thousandths);
        case Component::NA:
            return lawfulSodium(thousandths);
        case Component::CHOCDF:
        case Component::FIBTG:
        case Component::SUGAR:
        case Component::SUGAD:
        case Component::PROCNT:
            return lawfulWholeGrams(thousandths);
        default:
            return lawfulVitamins(component, thousandths);
    }
}

}  // namespace nettare
