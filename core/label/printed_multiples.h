#pragma once

#include "core/quantity/decimal.h"
#include "core/quantity/fraction.h"
#include "core/support/result.h"

#include <span>

namespace nettare {

/// What was printed for a multiple of one unrounded figure: 3 pieces print 175.
struct PrintedMultiple {
    Fraction multiple;  ///< > 0
    Decimal printed;    ///< a whole number of steps, >= 0
};

/// An exact interval of fractions; an end may be left out, as a tie rule does.
struct FractionInterval {
    Fraction low;
    Fraction high;
    bool lowIncluded = true;
    bool highIncluded = true;

    [[nodiscard]] bool contains(Fraction value) const;
};

/// The unrounded figures for one piece, none below 0, that print so for every multiple when each is
/// rounded once to `step` under that tie rule: 58, 117 and 175 for one, two and three pieces come
/// from 58.25 to below 58.5. Exact throughout.
/// Fails: NothingPrintsSo (values "multiple" and "printed" of the first that cannot hold together
/// with those before it), NotPositive for a multiple or step, TooFewItems without a multiple,
/// OutOfRange where the exact numbers leave 64 bits.
[[nodiscard]] Result<FractionInterval> figuresPrintedSo(std::span<const PrintedMultiple> multiples,
                                                        Decimal step, Ties ties = Ties::Up);

}  // namespace nettare
