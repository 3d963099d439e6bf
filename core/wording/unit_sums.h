#pragma once

#include <optional>

#include "core/wording/read_measure.h"
#include "core/wording/unit_words.h"

namespace nettare {

/// What follows a measure whose unit was just read, at the token `read.end`: a sum ("plus 2 tbsp",
/// the ounces of "1 lb 4 oz") is added exactly in the first unit, the second end of a range
/// ("80g-100g") becomes its high end. The measure stays where neither fits.
void addSums(const LineScan& scan, std::size_t begin, MeasureRead& read);

}  // namespace nettare
