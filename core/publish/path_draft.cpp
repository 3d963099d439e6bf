#include "core/publish/path_draft.h"

#include <algorithm>
#include <cmath>

#include "core/nutrition/student_t.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

constexpr int kMostOwnDecimals = 6;
constexpr std::int64_t kLargestDenominator = 1000;

PathNumber wholeNumber(std::int64_t number, const std::string& unit = {}) {
    return {static_cast<double>(number), 0, unit};
}

bool endsAsDecimal(Fraction fraction) {
    return 1'000'000 % fraction.denominator() == 0;
}

}  // namespace

PathNumber pathNumber(double value, std::string unit, int decimals) {
    const int own = Decimal::fromDouble(value).decimals();
    return {value, own <= kMostOwnDecimals ? own : decimals, std::move(unit)};
}

PathDraft& PathDraft::by(PathNumber number, bool divides) {
    rule = PathRule::Formula;
    factors.push_back({{std::move(number)}, divides});
    return *this;
}

PathDraft& PathDraft::by(PathDraft from, std::string unit, bool divides) {
    PathNumber number{from.value, from.decimals, std::move(unit)};
    number.below = below.size();
    below.push_back(std::move(from));
    return by(std::move(number), divides);
}

PathDraft& PathDraft::byFraction(Fraction fraction, const std::string& unit) {
    if (endsAsDecimal(fraction)) return by(pathNumber(fraction.value(), unit));
    by(wholeNumber(fraction.numerator(), unit));
    return by(wholeNumber(fraction.denominator()), true);
}

PathDraft& PathDraft::byRatio(double ratio, const std::string& unit, int startDecimals) {
    const PathNumber number = pathNumber(ratio, unit, startDecimals);
    if (number.decimals == Decimal::fromDouble(ratio).decimals()) return by(number);
    for (std::int64_t q = 2; q <= kLargestDenominator; ++q) {
        const double p = ratio * static_cast<double>(q);
        if (std::fabs(p - std::round(p)) > 1e-12 * std::fabs(p) || std::round(p) == 0) continue;
        return byFraction(*Fraction::make(std::llround(p), q), unit);
    }
    return by(number);
}

PathDraft& PathDraft::add(PathDraft draft) {
    rule = PathRule::Sum;
    below.push_back(std::move(draft));
    return *this;
}

PathDraft& PathDraft::computed() {
    if (rule == PathRule::Sum) {
        value = 0;
        for (const PathDraft& part : below) value += part.value;
        return *this;
    }
    value = negative ? -1 : 1;
    for (const PathFactor& factor : factors) {
        double sum = 0;
        for (const PathNumber& number : factor.sum)
            sum += number.minus ? -number.value : number.value;
        value = factor.divides ? value / sum : value * sum;
    }
    return *this;
}

PathDraft& PathDraft::within(double halfWidth, int leastDecimals) {
    constexpr std::string_view kSign = "± ";
    if (halfWidth == 0) return *this;
    step.plusMinus = halfWidthText(std::max(decimals, leastDecimals), halfWidth);
    step.plusMinus.erase(0, kSign.size());
    return *this;
}

PathDraft pathDraft(PathKind kind, std::string unit, std::string words) {
    PathDraft draft;
    draft.step.kind = kind;
    draft.step.unit = std::move(unit);
    draft.step.words = std::move(words);
    return draft;
}

double pathHalfWidth(const LinearForm& form, Meaning meaning) {
    LinearForm ofMeaning{form.value()};
    for (LinearForm::Term term : form.terms()) {
        term.source.u = term.source.uFor(meaning);
        ofMeaning.depend(term.source, term.sensitivity);
    }
    const Uncertainty uncertainty = uncertaintyOf(ofMeaning);
    return uncertainty.u == 0 ? 0 : coverageFactor(uncertainty.freedom) * uncertainty.u;
}

}  // namespace nettare
