#pragma once

#include <QString>

#include "app/scale/purpose.h"

namespace nettare {

/// What was weighed before for the same purpose: "reading 6 · last five: 9.6 9.9 10.1 9.7 9.8 g
/// each". Empty where nothing was.
[[nodiscard]] QString lastReadings(const Evaluation& evaluation, const Purpose& purpose);

}  // namespace nettare
