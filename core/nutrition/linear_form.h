#pragma once

#include <vector>

#include "core/nutrition/source.h"

namespace nettare {

/// A value with its sensitivities to sources, to first order (JCGM 100:2008, 5.1): the form in
/// which grams travel. Each source appears once.
///
/// Assumes: uncertainties small beside the curvature of products and quotients; a Monte Carlo run
/// is the check.
class LinearForm {
public:
    struct Term {
        Source source;
        double sensitivity;
    };

    LinearForm() = default;
    explicit LinearForm(double value) : value_{value} {}

    [[nodiscard]] double value() const { return value_; }
    [[nodiscard]] const std::vector<Term>& terms() const { return terms_; }

    /// Adds a sensitivity to a source; the value stays.
    LinearForm& depend(const Source& source, double sensitivity);
    /// Adds factor x other.
    LinearForm& add(const LinearForm& other, double factor = 1);

    [[nodiscard]] LinearForm times(double factor) const;
    [[nodiscard]] LinearForm times(const LinearForm& other) const;
    /// Other must not be zero.
    [[nodiscard]] LinearForm dividedBy(const LinearForm& other) const;

    /// Combined standard uncertainty.
    [[nodiscard]] double uncertainty() const;

private:
    void addTerms(const LinearForm& other, double factor);
    /// Of the term of that source among the first `count`, looked for from `from` on; else `count`.
    [[nodiscard]] std::size_t placeOf(const SourceKey& key, std::size_t count,
                                      std::size_t from) const;

    double value_ = 0;
    std::vector<Term> terms_;
};

}  // namespace nettare
