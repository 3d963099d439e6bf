#pragma once

#include <QString>

#include <optional>

#include "app/scale/purpose.h"

namespace nettare {

/// What was weighed before for the same purpose: "reading 6 · last five: 9.6 9.9 10.1 9.7 9.8 g
/// each". Empty where nothing was.
[[nodiscard]] QString lastReadings(const Evaluation& evaluation, const Purpose& purpose);

/// What those readings come to, such as "382 g", where readings for that purpose add up; empty for
/// a series and where nothing was weighed.
[[nodiscard]] QString weighedBefore(const Evaluation& evaluation, const Purpose& purpose);

/// The same in grams; 0 where weighedBefore() is empty.
[[nodiscard]] double gramsBefore(const Evaluation& evaluation, const Purpose& purpose);

/// Mean grams of a piece in the series so far; nothing without readings or for another purpose.
[[nodiscard]] std::optional<double> gramsEachBefore(const Evaluation& evaluation,
                                                    const Purpose& purpose);

}  // namespace nettare
