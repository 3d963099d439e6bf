#pragma once

#include <string>
#include <vector>

#include "core/wording/line_reading.h"

namespace nettare {

/// What a choice means; the words for it are the app's.
enum class LineMeaning {
    WeightOunce,   ///< oz
    FluidOunce,    ///< fl oz
    DecimalMark,   ///< "1,500" is one and a half
    ThousandsMark  ///< "1,500" is fifteen hundred
};

/// Which field the question is about.
enum class LineField { Amount, Each, Equals };

struct LineChoice {
    LineMeaning meaning;
    std::string value;  ///< the unit's symbol, or the number with a decimal point
};

/// A double meaning of a line that only the cook can decide.
struct LineQuestion {
    LineField field;
    std::size_t index;    ///< among several measures of that field, else 0
    std::string written;  ///< the number as typed
    std::vector<LineChoice> choices;
};

/// All questions of a reading, in the order of its fields. A pint, whose size hangs on the recipe's
/// measures, is asked by who knows them.
[[nodiscard]] std::vector<LineQuestion> questionsOf(const LineReading& reading);

/// The reading with that answer; `choice` is one of the question's.
[[nodiscard]] LineReading answered(LineReading reading, const LineQuestion& question,
                                   const LineChoice& choice);

}  // namespace nettare
