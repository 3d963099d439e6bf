#include "core/nutrition/linear_form.h"

#include <algorithm>
#include <bitset>
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

/// Tells most sources that are not among some terms without looking at these: a bit for each key.
class KeyFilter {
public:
    explicit KeyFilter(const std::vector<LinearForm::Term>& terms) {
        for (const LinearForm::Term& term : terms) bits_.set(bitOf(term.source.key));
    }
    [[nodiscard]] bool mayHold(const SourceKey& key) const { return bits_.test(bitOf(key)); }

private:
    static constexpr std::size_t kBits = 512;

    static std::size_t bitOf(const SourceKey& key) {
        return (key.first * 37U + key.second * 5U + static_cast<std::size_t>(key.kind) * 101U) %
               kBits;
    }

    std::bitset<kBits> bits_;
};

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

std::size_t LinearForm::placeOf(const SourceKey& key, std::size_t count, std::size_t from) const {
    for (std::size_t i = from; i < count; ++i)
        if (terms_[i].source.key == key) return i;
    for (std::size_t i = 0; i < from; ++i)
        if (terms_[i].source.key == key) return i;
    return count;
}

void LinearForm::addTerms(const LinearForm& other, double factor) {
    if (terms_.empty()) {
        terms_ = other.terms_;
        for (Term& term : terms_) term.sensitivity *= factor;
        return;
    }
    // The other's sources differ from one another: each is looked for among those that were here
    // before. Forms that grow from common ones hold them in one order, so the next is often next.
    const std::size_t before = terms_.size();
    terms_.reserve(before + other.terms_.size());
    const KeyFilter here{terms_};
    std::size_t next = 0;
    for (const Term& term : other.terms_) {
        const double sensitivity = term.sensitivity * factor;
        const std::size_t place =
            here.mayHold(term.source.key) ? placeOf(term.source.key, before, next) : before;
        if (place == before) {
            terms_.push_back({term.source, sensitivity});
            continue;
        }
        terms_[place].sensitivity = sumOrZero(terms_[place].sensitivity, sensitivity);
        next = place + 1 == before ? 0 : place + 1;
    }
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
