#include "core/wording/line_head.h"

#include "core/wording/head_reader.h"
#include "core/wording/segment.h"

namespace nettare {

namespace {

/// The colon of "for the sauce:", or `i`.
std::size_t purposeEnd(const LineScan& scan, std::size_t i) {
    if (!scan.is(i, "for") && !scan.is(i, "to")) return i;
    for (std::size_t at = i + 1; at < i + 7 && at + 1 < scan.size(); ++at)
        if (scan.is(at, ":")) return at;
    return i;
}

}  // namespace

std::size_t readFrontFlags(LineScan& scan, std::size_t i) {
    if (const std::size_t colon = purposeEnd(scan, i); colon != i) {
        scan.addPreparation({i, colon});
        scan.give({colon, colon + 1}, LinePartKind::Preparation);
        return colon + 1;
    }
    if (scan.is(i, "optional") && isParting(scan, i + 1)) {
        scan.reading().optional = true;
        scan.give({i, i + 2}, LinePartKind::Optional);
        return i + 2;
    }
    if (scan.isKind(i, TokenKind::Open) && scan.is(i + 1, "optional") &&
        scan.isKind(i + 2, TokenKind::Close) && i + 3 < scan.size())
        return takeBracket(scan, i, SegmentPlace::AfterFood);
    return i;
}

std::size_t readHead(LineScan& scan, std::size_t i) {
    return HeadReader{scan, i}.read();
}

}  // namespace nettare
