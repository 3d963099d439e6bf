#include "core/wording/read_line.h"

#include "core/wording/line_end.h"
#include "core/wording/line_food.h"
#include "core/wording/line_head.h"
#include "core/wording/line_scan.h"
#include "core/wording/part_of.h"

namespace nettare {

LineReading readLine(std::string_view text) {
    LineReading reading;
    reading.text = text;
    LineScan scan{text, reading};
    const PartOf part = readPartOf(scan, readFrontFlags(scan, 0));
    const FoodRead food = readFood(scan, readHead(scan, part.end));
    readTail(scan, food.end);
    if (part.parts.empty())
        settle(scan, food);
    else
        applyPartOf(scan, part, food.words);
    scan.finish();
    return reading;
}

}  // namespace nettare
