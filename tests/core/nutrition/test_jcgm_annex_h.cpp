#include <array>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/budget.h"
#include "core/nutrition/linear_form.h"
#include "core/nutrition/student_t.h"

// The examples of JCGM 100:2008, annex H, from memory, put together as figures are.

using namespace nettare;

namespace {

/// Sources of no kitchen: any key will do.
Source input(std::uint32_t number, double u,
             double freedom = std::numeric_limits<double>::infinity()) {
    return ownSource({SourceKind::SeriesMean, number, 0}, u, freedom);
}

LinearForm measured(double value, const Source& source) {
    return LinearForm{value}.depend(source, 1);
}

double covarianceOf(const LinearForm& a, const LinearForm& b) {
    double sum = 0;
    for (const LinearForm::Term& one : a.terms())
        for (const LinearForm::Term& other : b.terms())
            if (one.source.key == other.source.key)
                sum += one.sensitivity * other.sensitivity * one.source.u * one.source.u;
    return sum;
}

double correlationOf(const LinearForm& a, const LinearForm& b) {
    return covarianceOf(a, b) / (a.uncertainty() * b.uncertainty());
}

/// The mean of five readings that were taken together: each set of readings is one source, so that
/// means of two columns covary by 5.2.3 (formula 17).
LinearForm meanOf(const std::array<double, 5>& readings) {
    double mean = 0;
    for (const double reading : readings) mean += reading / 5;
    LinearForm form{mean};
    for (std::size_t i = 0; i < 5; ++i)
        form.depend(input(static_cast<std::uint32_t>(i), 1),
                    (readings[i] - mean) / std::sqrt(5.0 * 4));
    return form;
}

/// A function of one form to first order: its value and its slope there.
LinearForm applied(const LinearForm& form, double value, double slope) {
    return LinearForm{value}.add(form.times(slope)).add(LinearForm{-slope * form.value()});
}

}  // namespace

TEST_CASE("the end gauge of H.1 has u = 32 nm with 16 degrees of freedom", "[nutrition]") {
    // Lengths in nm. Standard 50.000 623 mm, u = 25 nm, nu = 18; difference 215 nm of repeated
    // readings (5.8, 24) and two effects of the comparator (3.9, 5 and 6.7, 8).
    const LinearForm standard = measured(50'000'623, input(1, 25, 18));
    const LinearForm difference = LinearForm{215}
                                      .depend(input(2, 5.8, 24), 1)
                                      .depend(input(3, 3.9, 5), 1)
                                      .depend(input(4, 6.7, 8), 1);
    // Expansion per K and temperatures in K: alpha = 11.5e-6 within 2e-6, of both gauges alike
    // within 1e-6 (nu = 50); -0.1 K +- 0.2 with a cycle of 0.5, difference 0 within 0.05 (nu = 2).
    const LinearForm expansion = measured(11.5e-6, input(5, 2e-6 / std::sqrt(3.0)));
    const LinearForm expansionDifference = measured(0, input(6, 1e-6 / std::sqrt(3.0), 50));
    const LinearForm temperature =
        LinearForm{-0.1}.depend(input(7, 0.2), 1).depend(input(8, 0.5 / std::sqrt(2.0)), 1);
    const LinearForm temperatureDifference = measured(0, input(9, 0.05 / std::sqrt(3.0), 2));

    LinearForm correction = expansionDifference.times(temperature);
    correction.add(expansion.times(temperatureDifference));
    LinearForm length = standard;
    length.add(difference).add(standard.times(correction), -1);

    CHECK(length.value() == Approx(50'000'838));
    const Uncertainty found = uncertaintyOf(length);
    CHECK(found.u == Approx(32).margin(0.5));
    CHECK(std::floor(found.freedom) == 16);
    CHECK(uncertaintyOf(difference).u == Approx(9.7).margin(0.05));
    CHECK(uncertaintyOf(difference).freedom == Approx(25.6).margin(0.3));
    // U99 = 2.92 x 32 nm = 93 nm.
    CHECK(studentT(0.995, 16) * found.u == Approx(93).margin(1));
}

TEST_CASE("resistance and reactance of H.2 come out with their correlations", "[nutrition]") {
    // Table H.2: five simultaneous readings of voltage (V), current (mA) and phase (rad).
    const LinearForm voltage = meanOf({5.007, 4.994, 5.005, 4.990, 4.999});
    const LinearForm milliamperes = meanOf({19.663, 19.639, 19.640, 19.685, 19.678});
    const LinearForm phase = meanOf({1.0456, 1.0438, 1.0468, 1.0428, 1.0433});
    CHECK(voltage.uncertainty() == Approx(0.0032).margin(0.00005));
    CHECK(milliamperes.uncertainty() == Approx(0.0095).margin(0.00005));
    CHECK(phase.uncertainty() == Approx(0.00075).margin(0.000005));
    CHECK(correlationOf(voltage, milliamperes) == Approx(-0.36).margin(0.006));
    CHECK(correlationOf(voltage, phase) == Approx(0.86).margin(0.006));
    CHECK(correlationOf(milliamperes, phase) == Approx(-0.65).margin(0.006));

    const LinearForm impedance = voltage.dividedBy(milliamperes.times(0.001));
    const double angle = phase.value();
    const LinearForm resistance =
        impedance.times(applied(phase, std::cos(angle), -std::sin(angle)));
    const LinearForm reactance = impedance.times(applied(phase, std::sin(angle), std::cos(angle)));
    // Table H.3, in ohm.
    CHECK(resistance.value() == Approx(127.732).margin(0.0006));
    CHECK(reactance.value() == Approx(219.847).margin(0.0006));
    CHECK(impedance.value() == Approx(254.260).margin(0.0006));
    CHECK(resistance.uncertainty() == Approx(0.071).margin(0.0006));
    CHECK(reactance.uncertainty() == Approx(0.295).margin(0.0006));
    CHECK(impedance.uncertainty() == Approx(0.236).margin(0.0006));
    CHECK(correlationOf(resistance, reactance) == Approx(-0.588).margin(0.002));
    CHECK(correlationOf(resistance, impedance) == Approx(-0.485).margin(0.002));
    CHECK(correlationOf(reactance, impedance) == Approx(0.993).margin(0.001));
}
