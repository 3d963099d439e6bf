#include "core/wording/number_words.h"

#include "core/wording/word_list.h"

namespace nettare {

namespace {

using enum NumberWordKind;

/// A few are two to four and several three to five (our convention; common practice sets none).
constexpr WordTable kNumberWords{
    NumberWord{"a", Article, 1, 1, 0},
    NumberWord{"an", Article, 1, 1, 0},
    NumberWord{"couple", Group, 2, 1, 0},
    NumberWord{"dozen", Group, 12, 1, 0},
    NumberWord{"eight", Count, 8, 1, 0},
    NumberWord{"eighteen", Count, 18, 1, 0},
    NumberWord{"eighth", Share, 1, 8, 0},
    NumberWord{"eighths", Share, 1, 8, 0},
    NumberWord{"eleven", Count, 11, 1, 0},
    NumberWord{"few", Vague, 2, 1, 4},
    NumberWord{"fifteen", Count, 15, 1, 0},
    NumberWord{"fifty", Count, 50, 1, 0},
    NumberWord{"five", Count, 5, 1, 0},
    NumberWord{"forty", Count, 40, 1, 0},
    NumberWord{"four", Count, 4, 1, 0},
    NumberWord{"fourteen", Count, 14, 1, 0},
    NumberWord{"fourth", Share, 1, 4, 0},
    NumberWord{"fourths", Share, 1, 4, 0},
    NumberWord{"half", Half, 1, 2, 0},
    NumberWord{"hundred", Group, 100, 1, 0},
    NumberWord{"nine", Count, 9, 1, 0},
    NumberWord{"one", Count, 1, 1, 0},
    NumberWord{"one-eighth", Count, 1, 8, 0},
    NumberWord{"one-fourth", Count, 1, 4, 0},
    NumberWord{"one-half", Count, 1, 2, 0},
    NumberWord{"one-quarter", Count, 1, 4, 0},
    NumberWord{"one-third", Count, 1, 3, 0},
    NumberWord{"pair", Group, 2, 1, 0},
    NumberWord{"quarter", Share, 1, 4, 0},
    NumberWord{"quarters", Share, 1, 4, 0},
    NumberWord{"seven", Count, 7, 1, 0},
    NumberWord{"several", Vague, 3, 1, 5},
    NumberWord{"six", Count, 6, 1, 0},
    NumberWord{"sixteen", Count, 16, 1, 0},
    NumberWord{"sixty", Count, 60, 1, 0},
    NumberWord{"ten", Count, 10, 1, 0},
    NumberWord{"third", Share, 1, 3, 0},
    NumberWord{"thirds", Share, 1, 3, 0},
    NumberWord{"thirteen", Count, 13, 1, 0},
    NumberWord{"thirty", Count, 30, 1, 0},
    NumberWord{"three", Count, 3, 1, 0},
    NumberWord{"three-fourths", Count, 3, 4, 0},
    NumberWord{"three-quarters", Count, 3, 4, 0},
    NumberWord{"twelve", Count, 12, 1, 0},
    NumberWord{"twenty", Count, 20, 1, 0},
    NumberWord{"twenty-five", Count, 25, 1, 0},
    NumberWord{"twenty-four", Count, 24, 1, 0},
    NumberWord{"two", Count, 2, 1, 0},
    NumberWord{"two-thirds", Count, 2, 3, 0},
};

}  // namespace

const NumberWord* numberWord(std::string_view lower) {
    return kNumberWords.rowOf(lower);
}

}  // namespace nettare
