#pragma once

#include <cstddef>

#include "core/wording/line_scan.h"
#include "core/wording/read_measure.h"
#include "core/wording/read_number.h"

namespace nettare {

/// Reads one head from left to right; each step takes its tokens and moves on.
class HeadReader {
public:
    HeadReader(LineScan& scan, std::size_t i) : scan_{scan}, reading_{scan.reading()}, at_{i} {}

    std::size_t read();

private:
    void take(std::size_t end, LinePartKind kind);

    /// "about", "heaping", and an article before them.
    bool mark();

    /// "a little oil", "some oil": no number at all.
    bool unsaid();

    void setCount(const NumberRead& number, std::size_t begin);

    /// What is counted without a number is one.
    void setOne();

    /// "2-inch piece": no count but a length.
    bool lengthFirst();

    bool number();

    /// The number of "2% milk" and "7-up" counts nothing.
    [[nodiscard]] bool isName(std::size_t i) const;

    /// Number and unit. A pack behind them makes them what one pack holds: "400g tin of".
    bool measured(const NumberRead& number);

    /// Behind "/14 oz" and its like.
    [[nodiscard]] std::size_t slashesEnd(std::size_t i) const;

    void setUnits(MeasureRead& read);

    void putEach(MeasureRead read);

    /// One thing between the number and what it counts.
    bool between();

    /// "2 x 400 g".
    bool times();

    bool furtherNumber();

    /// Whether "a 3 lb ..." tells of one piece, and "a 1/2 cup ..." does not.
    [[nodiscard]] bool isOfOne(const MeasureRead& read) const;

    /// "1 (14.5 oz) can"; nothing follows a bracket at the end of the line.
    bool bracket();

    bool fill();

    [[nodiscard]] bool countsSomething(std::size_t i) const;

    /// Size before a unit or piece; before the food it is read there.
    bool pieceSize();

    /// "1 firmly packed cup".
    bool filledBy();

    void unitOrPiece();

    bool unit(bool counted);

    /// "cup and a half of"
    void andHalf();

    void afterUnit();

    LineScan& scan_;
    LineReading& reading_;
    std::size_t at_;
    bool article_ = false;  ///< what was read so far is no number but "a"
};

}  // namespace nettare
