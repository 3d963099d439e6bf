#include "core/nutrition/linear_form.h"

#include <algorithm>
#include <cmath>

namespace nettare {

namespace {

/// A reading has a gross, a tare and a calibration; most lines add their own rounding.
constexpr std::size_t kUsualTerms = 4;

/// Two parts that cancel leave a rest of the last digits; it is zero.
double sumOrZero(double a, double b) {
    const double sum = a + b;
    return std::fabs(sum) <= 1e-13 * std::max(std::fabs(a), std::fabs(b)) ? 0 : sum;
}

}  // namespace

double rectangular(double fullWidth) {
    return fullWidth / std::sqrt(12.0);
}

LinearForm& LinearForm::depend(const Source& source, double sensitivity) {
    for (Term& term : terms_)
        if (term.source.key == source.key) {
            term.sensitivity = sumOrZero(term.sensitivity, sensitivity);
            return *this;
        }
    if (terms_.empty()) terms_.reserve(kUsualTerms);
    terms_.push_back({source, sensitivity});
    return *this;
}

void LinearForm::addTerms(const LinearForm& other, double factor) {
    if (terms_.empty()) {
        terms_ = other.terms_;
        for (Term& term : terms_) term.sensitivity *= factor;
        return;
    }
    for (const Term& term : other.terms_) depend(term.source, term.sensitivity * factor);
}

LinearForm& LinearForm::add(const LinearForm& other, double factor) {
    value_ += factor * other.value_;
    addTerms(other, factor);
    return *this;
}

LinearForm LinearForm::times(double factor) const {
    LinearForm result{value_ * factor};
    result.addTerms(*this, factor);
    return result;
}

LinearForm LinearForm::times(const LinearForm& other) const {
    LinearForm result{value_ * other.value_};
    result.terms_.reserve(terms_.size() + other.terms_.size());
    result.addTerms(*this, other.value_);
    result.addTerms(other, value_);
    return result;
}

LinearForm LinearForm::dividedBy(const LinearForm& other) const {
    LinearForm result{value_ / other.value_};
    result.terms_.reserve(terms_.size() + other.terms_.size());
    result.addTerms(*this, 1 / other.value_);
    result.addTerms(other, -value_ / (other.value_ * other.value_));
    return result;
}

double LinearForm::uncertainty() const {
    double squares = 0;
    for (const Term& term : terms_) {
        const double part = term.sensitivity * term.source.u;
        squares += part * part;
    }
    return std::sqrt(squares);
}

}  // namespace nettare
