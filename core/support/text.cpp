#include "core/support/text.h"

#include <algorithm>

namespace nettare {

namespace {

constexpr std::string_view kSpaces = " \t\r\n\f\v";

/// All bytes of a UTF-8 character but its first have the form 10xxxxxx.
bool isContinuation(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

/// Length of the well-formed sequence at the front of `bytes` (RFC 3629, section 4), or 0.
std::size_t sequenceLength(std::string_view bytes) {
    const auto at = [&](std::size_t i) { return static_cast<unsigned char>(bytes[i]); };
    const unsigned first = at(0);
    if (first < 0x80) return 1;
    const std::size_t length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    // 80 to BF continue, C0 and C1 begin overlong forms only, from F5 on all lies beyond U+10FFFF.
    if (first < 0xC2 || first > 0xF4 || bytes.size() < length) return 0;
    for (std::size_t i = 1; i < length; ++i)
        if (!isContinuation(bytes[i])) return 0;
    const unsigned second = at(1);
    const bool overlong = (first == 0xE0 && second < 0xA0) || (first == 0xF0 && second < 0x90);
    const bool surrogate = first == 0xED && second > 0x9F;
    const bool beyond = first == 0xF4 && second > 0x8F;
    return overlong || surrogate || beyond ? 0 : length;
}

/// One well-formed sequence that hides, breaks or turns the line it stands in.
bool isHidden(std::string_view sequence) {
    const auto at = [&](std::size_t i) { return static_cast<unsigned char>(sequence[i]); };
    // By length: C0 and DEL; C1 (U+0080 to U+009F); U+2028 to U+202E and U+2066 to U+2069.
    if (sequence.size() == 1) return at(0) < 0x20 || at(0) == 0x7F;
    if (sequence.size() == 2) return at(0) == 0xC2 && at(1) < 0xA0;
    if (sequence.size() != 3 || at(0) != 0xE2) return false;
    const bool breaksOrTurns = at(1) == 0x80 && at(2) >= 0xA8 && at(2) <= 0xAE;
    const bool isolates = at(1) == 0x81 && at(2) >= 0xA6 && at(2) <= 0xA9;
    return breaksOrTurns || isolates;
}

}  // namespace

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(kSpaces);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(kSpaces) - first + 1);
}

std::string lowerAscii(std::string_view text) {
    std::string lower{text};
    std::transform(lower.begin(), lower.end(), lower.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return lower;
}

std::vector<std::string_view> split(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    std::size_t start = 0;
    for (;;) {
        const std::size_t end = text.find(separator, start);
        parts.push_back(text.substr(start, end - start));
        if (end == std::string_view::npos) return parts;
        start = end + 1;
    }
}

std::vector<std::string_view> words(std::string_view text) {
    std::vector<std::string_view> found;
    std::size_t start = text.find_first_not_of(kSpaces);
    while (start != std::string_view::npos) {
        const std::size_t end = text.find_first_of(kSpaces, start);
        found.push_back(text.substr(start, end - start));
        start = text.find_first_not_of(kSpaces, end);
    }
    return found;
}

std::size_t codePoints(std::string_view utf8) {
    return utf8.size() -
           static_cast<std::size_t>(std::count_if(utf8.begin(), utf8.end(), isContinuation));
}

std::size_t utf8Prefix(std::string_view bytes) {
    std::size_t good = 0;
    while (good < bytes.size()) {
        const std::size_t length = sequenceLength(bytes.substr(good));
        if (length == 0) break;
        good += length;
    }
    return good;
}

bool isPlainLine(std::string_view utf8) {
    while (!utf8.empty()) {
        const std::size_t length = sequenceLength(utf8);
        if (length == 0 || isHidden(utf8.substr(0, length))) return false;
        utf8.remove_prefix(length);
    }
    return true;
}

std::string shortened(std::string_view bytes, std::size_t most) {
    std::string result;
    for (std::size_t points = 0; !bytes.empty(); ++points) {
        if (points == most) return result + "…";
        const std::size_t length = sequenceLength(bytes);
        // A byte that begins nothing counts as one character, so that what follows is read again.
        const std::string_view sequence = bytes.substr(0, std::max<std::size_t>(length, 1));
        if (length == 0)
            result += "\uFFFD";
        else if (isHidden(sequence))
            result += ' ';
        else
            result += sequence;
        bytes.remove_prefix(sequence.size());
    }
    return result;
}

std::string replaced(std::string_view text, std::string_view from, std::string_view to) {
    std::string result;
    std::size_t start = 0;
    for (;;) {
        const std::size_t at = text.find(from, start);
        result += text.substr(start, at - start);
        if (at == std::string_view::npos) return result;
        result += to;
        start = at + from.size();
    }
}

}  // namespace nettare
