#include "db/import/windows_1252.h"

#include <algorithm>
#include <array>

namespace nettare {

namespace {

/// Code points of the bytes 0x80 to 0x9F; 0 for those without a meaning. All other bytes are the
/// code points of their own number. Source: the mapping table CP1252.TXT of the Unicode Consortium.
constexpr std::array<unsigned, 32> kHigh{
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

constexpr unsigned kContinuation = 0x80;

char byteOf(unsigned value) {
    return static_cast<char>(static_cast<unsigned char>(value));
}

void append(std::string& text, unsigned point) {
    if (point < 0x800) {
        text += byteOf(0xC0U | (point >> 6U));
    } else {
        text += byteOf(0xE0U | (point >> 12U));
        text += byteOf(kContinuation | ((point >> 6U) & 0x3FU));
    }
    text += byteOf(kContinuation | (point & 0x3FU));
}

}  // namespace

std::optional<std::string> utf8FromWindows1252(std::string_view text) {
    std::string result;
    result.reserve(text.size());
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x80) {
            result += c;
            continue;
        }
        const unsigned point = byte < 0xA0 ? kHigh[byte - 0x80U] : byte;
        if (point == 0) return std::nullopt;
        append(result, point);
    }
    return result;
}

}  // namespace nettare
