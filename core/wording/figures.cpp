#include "core/wording/figures.h"

#include "core/quantity/amount.h"
#include "core/support/text.h"
#include "core/wording/signs.h"

namespace nettare {

namespace {

/// "1,500.5" without its grouping; the last mark is the decimal one where the marks differ.
std::string withoutGroupMarks(std::string_view figures) {
    std::string text = replaced(figures, "\u2044", "/");
    if (text.starts_with('.')) text.insert(0, "0");
    const std::size_t last = text.find_last_of(".,");
    const std::size_t first = text.find_first_of(".,");
    if (first == last) return text;
    const bool oneMark = text[first] == text[last];
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i)
        if ((text[i] != '.' && text[i] != ',') || (i == last && !oneMark)) plain += text[i];
    return plain;
}

std::optional<NumberRead> figuresToken(const LineScan& scan, std::size_t i) {
    if (!scan.isKind(i, TokenKind::Number)) return std::nullopt;
    const std::string text = withoutGroupMarks(scan.written(i));
    const auto decimal = readAmount(text, GroupMark::Unknown);
    if (decimal) return exactNumber(i + 1, decimal->low());
    if (decimal.error().code != ErrorCode::AmountAmbiguous) return std::nullopt;
    const bool comma = text.find(',') != std::string::npos;
    const auto one = readAmount(text, comma ? GroupMark::Point : GroupMark::Comma);
    const auto other = readAmount(text, comma ? GroupMark::Comma : GroupMark::Point);
    if (!one || !other) return std::nullopt;
    NumberRead read = exactNumber(i + 1, one->low());
    read.grouped = {other->low(), other->low()};
    return read;
}

/// The fraction that may follow a whole number: "1 1/2", "1½", "1-1/2", "1 and 1/2".
std::optional<NumberRead> partAfter(const LineScan& scan, std::size_t i) {
    const bool hyphen = scan.isKind(i, TokenKind::Dash) && scan.isGlued(i) && scan.isGlued(i + 1);
    const std::size_t at = hyphen || scan.is(i, "and") || scan.is(i, "&") ? i + 1 : i;
    const std::string_view written = scan.written(at);
    if (!scan.isKind(at, TokenKind::Number)) return std::nullopt;
    const bool sign = vulgarLength(written) != 0;
    if (!sign && written.find_first_of("/\u2044") == std::string_view::npos) return std::nullopt;
    const auto part = figuresToken(scan, at);
    return part && part->low < Fraction{1} ? part : std::nullopt;
}

}  // namespace

NumberRead exactNumber(std::size_t end, Fraction value) {
    return {end, value, value, {}};
}

NumberRead withPart(const NumberRead& whole, const std::optional<NumberRead>& part) {
    if (!part || whole.grouped || whole.low.denominator() != 1) return whole;
    const auto sum = whole.low.plus(part->low);
    return sum ? exactNumber(part->end, *sum) : whole;
}

std::optional<NumberRead> oneFigures(const LineScan& scan, std::size_t i) {
    const auto whole = figuresToken(scan, i);
    if (!whole) return std::nullopt;
    return withPart(*whole, partAfter(scan, whole->end));
}

}  // namespace nettare
