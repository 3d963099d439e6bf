#include <catch2/catch.hpp>

#include "core/label/us_daily_values.h"
#include "core/label/us_printed_interval.h"
#include "core/label/us_rounding.h"

#include "lawful_prints.h"

#include <algorithm>
#include <map>
#include <random>

using namespace nettare;

namespace {

constexpr int kRandomAmounts = 10'000;

/// Up to three daily values, half of the draws near the floors of the rules.
std::int64_t randomThousandths(Component component, std::mt19937& random) {
    const UsDailyValue* daily = usDailyValue(component);
    const double dailyAmount = daily != nullptr ? daily->amount.value() : 1000;
    const auto most = static_cast<std::int64_t>(dailyAmount * 3000);
    const bool small = random() % 2 == 0;
    const std::int64_t below = small ? std::min<std::int64_t>(most, 12'000) : most;
    return static_cast<std::int64_t>(random()) % below;
}

std::int64_t thousandthsOf(Decimal end) {
    const auto exact = end.fraction()->times(Fraction{1000});
    REQUIRE(exact->denominator() == 1);
    return exact->numerator();
}

bool isLawful(Component component, std::int64_t thousandths, const std::string& text) {
    return lawfulPrints(component, thousandths).count(text) != 0;
}

/// An end belongs to the interval exactly where some lawful rounding prints the text there, and one
/// thousandth further out none does.
void checkEnds(Component component, const std::string& text, const DecimalInterval& interval) {
    CAPTURE(factsOf(component).tagname, text);
    const std::int64_t low = thousandthsOf(interval.low);
    const std::int64_t high = thousandthsOf(interval.high);
    CHECK(isLawful(component, low, text) == interval.lowIncluded);
    CHECK(isLawful(component, high, text) == interval.highIncluded);
    CHECK(isLawful(component, low + 1, text));
    CHECK(isLawful(component, high - 1, text));
    if (low > 0) CHECK_FALSE(isLawful(component, low - 1, text));
    CHECK_FALSE(isLawful(component, high + 1, text));
}

void checkRoundTrip(Component component, std::mt19937& random) {
    std::map<std::string, DecimalInterval> seen;
    for (int i = 0; i < kRandomAmounts; ++i) {
        const std::int64_t thousandths = randomThousandths(component, random);
        CAPTURE(factsOf(component).tagname, thousandths);
        const auto text = usAmountText(component, static_cast<double>(thousandths) / 1000);
        REQUIRE(text);
        if (!isLawful(component, thousandths, *text)) FAIL("prints " << *text);
        auto known = seen.find(*text);
        if (known == seen.end()) {
            const auto interval = usPrintedInterval(component, *text);
            REQUIRE(interval);
            known = seen.emplace(*text, *interval).first;
            checkEnds(component, *text, *interval);
        }
        if (!known->second.contains(Decimal{thousandths, -3})) FAIL("not in its print " << *text);
    }
    CHECK(seen.size() > 5);
}

}  // namespace

TEST_CASE("every amount lies in the interval of its own print, and nothing beyond it prints so",
          "[label]") {
    std::mt19937 random{20161125};
    for (const ComponentFacts& facts : allComponents())
        if (usAmountRule(facts.component)) checkRoundTrip(facts.component, random);
}
