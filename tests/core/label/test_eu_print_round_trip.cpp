#include <catch2/catch.hpp>

#include "core/label/label_interval.h"
#include "core/label/label_lines.h"

#include "lawful_eu_prints.h"

#include <map>
#include <random>

namespace nettare {

namespace {

constexpr int kRandomTrueAmounts = 10'000;

/// Amounts of every size, the small ones as often as the large: up to 100 g, 1 g of a vitamin or
/// mineral, 4,000 kJ.
std::int64_t randomMillionths(const LabelLine& line, std::mt19937& random) {
    const bool energy =
        line == LabelLine{Component::ENERC_KJ} || line == LabelLine{Component::ENERC_KCAL};
    const std::int64_t most = energy                ? 4'000'000'000
                              : unitOf(line) == "g" ? 100'000'000
                                                    : 1'000'000'000;
    std::int64_t below = most;
    for (auto i = random() % 6; i > 0; --i) below /= 10;
    // One draw alone would not reach 4,000 kJ.
    const auto wide = static_cast<std::int64_t>(random()) * 2 + static_cast<std::int64_t>(random());
    // Half a step of less than a hundredth would be finer than a millionth.
    return wide % below + (unitOf(line) == "g" || energy ? 0 : 10'000);
}

std::int64_t millionthsOf(Decimal end) {
    const auto exact = end.fraction()->times(Fraction{1'000'000});
    REQUIRE(exact->denominator() == 1);
    return exact->numerator();
}

bool isLawfulEu(const LabelLine& line, std::int64_t millionths, const std::string& text) {
    return lawfulEuPrints(line, millionths).count(text) != 0;
}

/// An end belongs to the interval exactly where some lawful rounding prints the text there, and one
/// millionth further out none does.
void checkEuEnds(const LabelLine& line, const std::string& text, const DecimalInterval& interval) {
    CAPTURE(tagnameOf(line), text);
    const std::int64_t low = millionthsOf(interval.low);
    const std::int64_t high = millionthsOf(interval.high);
    CHECK(isLawfulEu(line, low, text) == interval.lowIncluded);
    CHECK(isLawfulEu(line, high, text) == interval.highIncluded);
    CHECK(isLawfulEu(line, low + 1, text));
    CHECK(isLawfulEu(line, high - 1, text));
    if (low > 0) CHECK_FALSE(isLawfulEu(line, low - 1, text));
    CHECK_FALSE(isLawfulEu(line, high + 1, text));
}

void checkEuRoundTrip(const LabelLine& line, std::mt19937& random) {
    std::map<std::string, DecimalInterval> seen;
    for (int i = 0; i < kRandomTrueAmounts; ++i) {
        const std::int64_t millionths = randomMillionths(line, random);
        CAPTURE(tagnameOf(line), millionths);
        for (const std::string& text : lawfulEuPrints(line, millionths)) {
            auto known = seen.find(text);
            if (known == seen.end()) {
                const auto interval = printedInterval(LabelRules::Eu, line, text);
                REQUIRE(interval);
                known = seen.emplace(text, *interval).first;
                if (seen.size() <= 2000) checkEuEnds(line, text, *interval);
            }
            if (!known->second.contains(Decimal{millionths, -6})) FAIL("not in its print " << text);
        }
    }
    CHECK(seen.size() > 5);
}

}  // namespace

TEST_CASE("every amount lies in the interval of each of its prints in the EU, and nothing beyond",
          "[label]") {
    // Alcohol is no line of the annex and has no rounding of its own.
    std::mt19937 random{20121213};
    for (const PrintedLine& line : printedLines(LabelRules::Eu))
        if (line.line != LabelLine{Component::ALC}) checkEuRoundTrip(line.line, random);
}

}  // namespace nettare
