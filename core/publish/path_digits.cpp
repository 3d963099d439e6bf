#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include <fmt/core.h>

#include "core/publish/number_text.h"
#include "core/publish/path_draft.h"
#include "core/publish/path_exact.h"

namespace nettare {

namespace {

constexpr int kProjectDigits = 12;
/// What a double holds; more would be digits of nothing.
constexpr int kMostSignificant = 15;
constexpr int kMostTries = 200;

int digitsFor(double value, int decimals) {
    if (value == 0) return decimals;
    return decimals + 1 + static_cast<int>(std::floor(std::log10(std::fabs(value))));
}

/// Fifteen significant digits, for formulas that end on a tie.
Decimal finelyWritten(double value) {
    std::array<char, 40> buffer{};
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                       std::chars_format::scientific, kMostSignificant - 1);
    std::int64_t coefficient = 0;
    const char* at = buffer.data();
    for (; *at != 'e'; ++at)
        if (*at >= '0' && *at <= '9') coefficient = coefficient * 10 + (*at - '0');
    at += at[1] == '+' ? 2 : 1;
    int exponent = 0;
    std::from_chars(at, written.ptr, exponent);
    return {value < 0 ? -coefficient : coefficient, exponent - kMostSignificant + 1};
}

Decimal printedAt(int decimals, double value, Direction direction = Direction::Nearest) {
    const Decimal step{1, -decimals};
    if (digitsFor(value, decimals) <= kProjectDigits)
        return steppedTo(Decimal::fromDouble(value), step, direction);
    return steppedTo(finelyWritten(value), step, direction);
}

Decimal printedAs(const PathNumber& number) {
    return printedAt(number.decimals, number.value);
}

/// What the printed numbers of a factor add up to.
std::optional<ExactNumber> sumOfFactor(const PathFactor& factor) {
    std::optional<ExactNumber> sum = ExactNumber{};
    for (const PathNumber& number : factor.sum) {
        const auto one = ExactNumber::of(printedAs(number));
        if (!one || !sum) return std::nullopt;
        sum = sum->plus(number.minus ? one->negated() : *one);
    }
    return sum;
}

std::optional<ExactNumber> resultOf(const PathDraft& draft) {
    std::optional<ExactNumber> result = ExactNumber::of({1, 0});
    for (const PathFactor& factor : draft.factors) {
        const auto sum = sumOfFactor(factor);
        if (!sum || !result) return std::nullopt;
        result = factor.divides ? result->dividedBy(*sum) : result->times(*sum);
    }
    return result && draft.negative ? result->negated() : result;
}

std::optional<ExactNumber> resultOfSum(const std::vector<PathDraft>& steps) {
    std::optional<ExactNumber> sum = ExactNumber{};
    for (const PathDraft& step : steps) {
        const auto one = ExactNumber::of(printedAt(step.decimals, step.value, step.direction));
        if (!one || !sum) return std::nullopt;
        sum = sum->plus(*one);
    }
    return sum;
}

bool prints(const std::optional<ExactNumber>& result, const PathDraft& draft, Decimal printed) {
    const auto written = result ? result->twelveDigits() : std::nullopt;
    return written && steppedTo(*written, Decimal{1, -draft.decimals}, draft.direction) == printed;
}

double errorOf(double value, int decimals) {
    if (digitsFor(value, decimals) >= kMostSignificant) return 0;
    return std::fabs(value - printedAt(decimals, value).value());
}

/// One decimal more for the number whose rounding moves the result most; false where none does.
bool refine(PathDraft& draft) {
    PathNumber* worst = nullptr;
    double most = 0;
    for (PathFactor& factor : draft.factors) {
        double sum = 0;
        for (const PathNumber& number : factor.sum)
            sum += number.minus ? -number.value : number.value;
        for (PathNumber& number : factor.sum) {
            const double moved =
                errorOf(number.value, number.decimals) / std::max(std::fabs(sum), 1e-9);
            if (moved <= most) continue;
            most = moved;
            worst = &number;
        }
    }
    if (worst != nullptr) ++worst->decimals;
    return worst != nullptr;
}

/// The same for all steps of a sum together.
bool refineSum(std::vector<PathDraft>& steps) {
    bool refined = false;
    for (PathDraft& step : steps) {
        if (errorOf(step.value, step.decimals) == 0) continue;
        ++step.decimals;
        refined = true;
    }
    return refined;
}

bool findDigits(PathDraft& draft, Decimal printed) {
    const bool sum = draft.rule == PathRule::Sum;
    for (int tries = 0; tries < kMostTries; ++tries) {
        if (prints(sum ? resultOfSum(draft.below) : resultOf(draft), draft, printed)) return true;
        if (!(sum ? refineSum(draft.below) : refine(draft))) return false;
    }
    return false;
}

/// " − 0.1 g"; what takes a negative number away adds it.
std::string numberInSum(const PathNumber& number, bool first) {
    const Decimal printed = printedAs(number);
    const bool negative = printed.coefficient() < 0;
    std::string text = printedDecimal(first || !negative ? printed : -printed) + number.unit;
    if (first) return text;
    return (number.minus != negative ? " − " : " + ") + text;
}

std::string formulaOf(const PathDraft& draft) {
    std::string text;
    for (const PathFactor& factor : draft.factors) {
        if (!text.empty()) text += factor.divides ? " / " : " × ";
        const bool brackets = factor.sum.size() > 1 && draft.factors.size() > 1;
        std::string sum;
        for (const PathNumber& number : factor.sum) {
            sum += numberInSum(number, sum.empty());
        }
        text += brackets ? "(" + sum + ")" : sum;
    }
    if (draft.direction == Direction::Floor) text += ", rounded down";
    if (draft.direction == Direction::Ceiling) text += ", rounded up";
    return draft.negative ? "−" + text : text;
}

std::string sumText(const PathDraft& draft) {
    return draft.below.size() == 1 ? std::string{"the step below"}
                                   : fmt::format("sum of the {} steps below", draft.below.size());
}

}  // namespace

PathStep settled(PathDraft draft) {
    PathStep step = std::move(draft.step);
    const Decimal printed = printedAt(draft.decimals, draft.value, draft.direction);
    step.value = printedDecimal(printed);
    if (draft.rule != PathRule::Given && findDigits(draft, printed))
        step.formula = draft.rule == PathRule::Sum ? sumText(draft) : formulaOf(draft);
    for (const PathFactor& factor : draft.factors)
        for (const PathNumber& number : factor.sum)
            if (number.below) draft.below[*number.below].decimals = number.decimals;
    for (PathDraft& below : draft.below) step.below.push_back(settled(std::move(below)));
    return step;
}

}  // namespace nettare
