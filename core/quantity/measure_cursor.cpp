#include "core/quantity/measure_cursor.h"

#include <array>
#include <utility>

#include "core/quantity/amount.h"
#include "core/quantity/fraction_sign.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// No-break, figure, thin, hair and narrow no-break space; hyphens and dashes; minus; fraction
/// slash.
constexpr std::array<std::pair<std::string_view, std::string_view>, 13> kPlain{{
    {"\u00A0", " "},
    {"\u2007", " "},
    {"\u2009", " "},
    {"\u200A", " "},
    {"\u202F", " "},
    {"\u2010", "-"},
    {"\u2011", "-"},
    {"\u2012", "-"},
    {"\u2013", "-"},
    {"\u2014", "-"},
    {"\u2212", "-"},
    {"\u2044", "/"},
    {"\t", " "},
}};

std::string plainText(std::string_view text) {
    std::string plain = lowerAscii(trimmed(text));
    for (const auto& [from, to] : kPlain) plain = replaced(plain, from, to);
    return plain;
}

bool isLetter(char c) {
    return c >= 'a' && c <= 'z';
}

}  // namespace

MeasureCursor::MeasureCursor(std::string_view text) : text_{plainText(text)} {}

std::string_view MeasureCursor::rest() const {
    return trimmed(std::string_view{text_}.substr(at_));
}

bool MeasureCursor::takeAbout() {
    return !takeOneOf({"about", "approximately", "approx.", "approx", "roughly", "around", "circa",
                       "ca.", "ca", "c.", "~", "≈"})
                .empty();
}

bool MeasureCursor::take(std::string_view word) {
    const std::size_t before = at_;
    skipSpaces();
    const std::string_view left = std::string_view{text_}.substr(at_);
    const bool fits =
        left.starts_with(word) &&
        !(isLetter(word.back()) && left.size() > word.size() && isLetter(left[word.size()]));
    at_ = fits ? at_ + word.size() : before;
    return fits;
}

std::string_view MeasureCursor::takeOneOf(std::initializer_list<std::string_view> words) {
    for (const std::string_view word : words)
        if (take(word)) return word;
    return {};
}

bool MeasureCursor::takeRangeMark() {
    return !takeOneOf({"-", "to", "or"}).empty();
}

std::optional<Fraction> MeasureCursor::takeNumber() {
    const std::size_t before = at_;
    skipSpaces();
    const std::size_t end = numberEnd();
    std::string number = text_.substr(at_, end - at_);
    // "1-1/2" is how some write 1 1/2.
    if (const std::size_t hyphen = number.find('-'); hyphen != std::string::npos)
        number[hyphen] = ' ';
    if (number.find_first_not_of("0.,") == std::string::npos && number.starts_with('0')) {
        at_ = end;
        return Fraction{0};
    }
    const auto amount = readAmount(number);
    at_ = amount ? end : before;
    return amount ? std::optional{amount->low()} : std::nullopt;
}

std::optional<Fraction> MeasureCursor::takeSignedNumber() {
    const std::size_t before = at_;
    const bool negative = take("-") || take("minus");
    const auto number = takeNumber();
    if (!number) at_ = before;
    return number && negative ? number->times(Fraction{-1}) : number;
}

std::optional<NumberRange> MeasureCursor::takeRange() {
    const auto low = takeNumber();
    if (!low) return std::nullopt;
    const std::size_t afterLow = at_;
    if (takeRangeMark())
        if (const auto high = takeNumber())
            return *high < *low ? std::nullopt : std::optional{NumberRange{*low, *high}};
    at_ = afterLow;
    return NumberRange{*low, *low};
}

void MeasureCursor::skipSpaces() {
    while (at_ < text_.size() && text_[at_] == ' ') ++at_;
}

std::size_t MeasureCursor::digitsFrom(std::size_t at) const {
    const std::size_t end = text_.find_first_not_of("0123456789", at);
    return end == std::string::npos ? text_.size() : end;
}

/// Behind "1/2" or "½" that stands at `at`; `at` itself where none does.
std::size_t MeasureCursor::fractionEnd(std::size_t at) const {
    if (at >= text_.size()) return at;
    if (const FractionSign* sign = signAtFront(std::string_view{text_}.substr(at)))
        return at + sign->sign.size();
    const std::size_t slash = digitsFrom(at);
    if (slash == at || slash >= text_.size() || text_[slash] != '/') return at;
    const std::size_t end = digitsFrom(slash + 1);
    return end > slash + 1 ? end : at;
}

/// Behind the longest number that stands here.
std::size_t MeasureCursor::numberEnd() const {
    if (const std::size_t end = fractionEnd(at_); end != at_) return end;
    const std::size_t whole = digitsFrom(at_);
    if (whole == at_ || whole >= text_.size()) return whole;
    const char next = text_[whole];
    if (next == '.' || next == ',') {
        const std::size_t end = digitsFrom(whole + 1);
        return end > whole + 1 ? end : whole;
    }
    const bool parted = next == ' ' || next == '-';
    const std::size_t part = whole + (parted ? 1 : 0);
    return fractionEnd(part) != part ? fractionEnd(part) : whole;
}

}  // namespace nettare
