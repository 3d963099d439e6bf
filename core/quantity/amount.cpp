#include "core/quantity/amount.h"

#include <charconv>
#include <optional>

#include "core/quantity/decimal.h"
#include "core/quantity/fraction_sign.h"
#include "core/support/text.h"

namespace nettare {

namespace {

Error unreadable(std::string_view text) {
    return Error{ErrorCode::NotAnAmount}.with("found", text);
}

/// What is no amount is quoted whole: the half of "2-" would be nothing.
Error ofWhole(const Error& error, std::string_view text) {
    return error.code == ErrorCode::NotAnAmount ? unreadable(text) : error;
}

bool allDigits(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

/// Up to nine digits; so many always fit, and from_chars cannot fail on them.
std::optional<std::int64_t> wholeNumber(std::string_view text) {
    if (!allDigits(text) || text.size() > 9) return std::nullopt;
    std::int64_t value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

/// "1/4", "1 / 4"; nothing for a zero below the slash or for two slashes.
std::optional<Fraction> slashed(std::string_view text) {
    const auto parts = split(text, '/');
    if (parts.size() != 2) return std::nullopt;
    const auto top = wholeNumber(trimmed(parts[0]));
    const auto bottom = wholeNumber(trimmed(parts[1]));
    return top && bottom ? Fraction::make(*top, *bottom) : std::nullopt;
}

/// "1,5" or "1.5" with either mark as the decimal mark; refuses what could also be thousands.
Result<Fraction> marked(std::string_view text, GroupMark group) {
    const std::size_t mark = text.find_first_of(".,");
    const std::string_view before = text.substr(0, mark);
    const std::string_view after = text.substr(mark + 1);
    if (!allDigits(before) || !allDigits(after)) return fail(unreadable(text));
    if (before.size() > 9 || after.size() > 6)
        return fail(Error{ErrorCode::AmountTooLong}.with("found", text));
    const std::string decimal = std::string{before} + "." + std::string{after};
    const std::string grouped = std::string{before} + std::string{after};
    // "1,50" and "0,500" group nothing: three digits follow a mark, and no group begins with 0.
    const bool couldGroup = after.size() == 3 && before.size() <= 3 && before.front() != '0';
    const bool groups = group == (text[mark] == ',' ? GroupMark::Comma : GroupMark::Point);
    if (couldGroup && group == GroupMark::Unknown)
        return fail(Error{ErrorCode::AmountAmbiguous}
                        .with("found", text)
                        .with("decimal", decimal)
                        .with("grouped", grouped));
    // Nine digits and six are fifteen, and a Decimal takes twelve.
    const auto value = Decimal::read(couldGroup && groups ? grouped : decimal);
    const auto fraction = value ? value->fraction() : std::nullopt;
    if (!fraction) return fail(Error{ErrorCode::AmountTooLong}.with("found", text));
    return *fraction;
}

/// A trailing vulgar fraction, with the text before it.
std::optional<std::pair<std::string_view, Fraction>> signedTail(std::string_view text) {
    const FractionSign* sign = signAtEnd(text);
    if (sign == nullptr) return std::nullopt;
    return std::pair{trimmed(text.substr(0, text.size() - sign->sign.size())), sign->value()};
}

/// "1 1/2", "1½" or "½". The part must be below one: "1 5/4" is a slip of the hand.
Result<Fraction> sum(std::string_view whole, Fraction part, std::string_view text) {
    if (whole.empty()) return part;
    const auto number = wholeNumber(whole);
    const auto total = number ? Fraction{*number}.plus(part) : std::nullopt;
    if (!total || part >= Fraction{1}) return fail(unreadable(text));
    return *total;
}

/// An amount without a range, or one end of a range.
Result<Fraction> readSingle(std::string_view text, GroupMark group) {
    if (const auto number = wholeNumber(text)) return Fraction{*number};
    if (allDigits(text)) return fail(Error{ErrorCode::AmountTooLong}.with("found", text));
    if (const auto tail = signedTail(text)) return sum(tail->first, tail->second, text);
    if (text.find('/') != std::string_view::npos) {
        const std::size_t space = text.find(' ');
        const bool mixed = space < text.find('/') && allDigits(text.substr(0, space));
        const auto part = slashed(mixed ? text.substr(space + 1) : text);
        if (!part) return fail(unreadable(text));
        return mixed ? sum(text.substr(0, space), *part, text) : Result<Fraction>{*part};
    }
    if (text.find_first_of(".,") != std::string_view::npos) return marked(text, group);
    return fail(unreadable(text));
}

}  // namespace

Result<Amount> readAmount(std::string_view text, GroupMark group) {
    const std::string_view clean = trimmed(text);
    if (clean.empty()) return fail(ErrorCode::EmptyText);
    if (clean.size() > 40) return fail(Error{ErrorCode::AmountTooLong}.with("found", text));
    // Here a hyphen in front is a sign; further on it parts the ends of a range, as an en dash
    // does.
    if (clean.front() == '-' || clean.starts_with("−"))
        return fail(Error{ErrorCode::AmountNotPositive}.with("found", text));
    const std::string plain = replaced(clean, "–", "-");
    const std::size_t dash = plain.find('-');
    const std::string_view all{plain};
    const auto low = readSingle(trimmed(all.substr(0, dash)), group);
    if (!low) return fail(ofWhole(low.error(), text));
    const auto high =
        dash == std::string::npos ? low : readSingle(trimmed(all.substr(dash + 1)), group);
    if (!high) return fail(ofWhole(high.error(), text));
    if (*low <= Fraction{0} || *high <= Fraction{0})
        return fail(Error{ErrorCode::AmountNotPositive}.with("found", text));
    if (*high < *low) return fail(Error{ErrorCode::RangeReversed}.with("found", text));
    return Amount{*low, *high, std::string{text}};
}

std::string writeFraction(Fraction fraction) {
    const std::int64_t whole = fraction.numerator() / fraction.denominator();
    const std::int64_t rest = fraction.numerator() % fraction.denominator();
    if (rest == 0) return std::to_string(whole);
    const std::string part = std::to_string(rest) + "/" + std::to_string(fraction.denominator());
    return whole == 0 ? part : std::to_string(whole) + " " + part;
}

}  // namespace nettare
