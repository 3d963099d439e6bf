#include "core/wording/line_end.h"

#include <algorithm>

#include "core/wording/segment.h"

namespace nettare {

namespace {

std::size_t stretchEnd(const LineScan& scan, std::size_t i) {
    while (i < scan.size() && !isParting(scan, i) && !scan.isKind(i, TokenKind::Open)) ++i;
    return i;
}

}  // namespace

void readTail(LineScan& scan, std::size_t i) {
    while (i < scan.size()) {
        if (scan.isKind(i, TokenKind::Open)) {
            i = takeBracket(scan, i, SegmentPlace::AfterFood);
            continue;
        }
        const std::size_t begin = isParting(scan, i) ? i + 1 : i;
        const std::size_t end = stretchEnd(scan, begin);
        takeSegment(scan, {begin, end}, SegmentPlace::Between);
        // The comma is with what it leads to.
        if (begin != i && begin < scan.size()) scan.give({i, begin}, scan.at(begin).owner);
        i = end;
    }
}

}  // namespace nettare
