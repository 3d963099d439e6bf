#include "app/scale/shown_number.h"

#include <QLocale>

#include <algorithm>
#include <string>

#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kMostDigits = 12;

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// "1,500": three digits after the mark that groups here, one to three before, no leading zero.
bool mayBeGrouped(std::string_view digits, std::size_t mark, GroupMark group) {
    const char grouping = group == GroupMark::Comma ? ',' : '.';
    return group != GroupMark::Unknown && digits[mark] == grouping && digits.size() - mark == 4 &&
           mark >= 1 && mark <= 3 && digits[0] != '0';
}

/// The digits with their one mark as a point; nothing for anything else.
std::optional<std::string> plainDigits(std::string_view digits) {
    std::string plain{digits};
    std::ranges::replace(plain, ',', '.');
    const bool known = std::ranges::all_of(plain, [](char c) { return isDigit(c) || c == '.'; });
    if (!known || std::ranges::count(plain, '.') > 1) return {};
    if (plain.starts_with('.')) plain.insert(0, "0");
    if (plain.ends_with('.')) plain.pop_back();
    return plain;
}

}  // namespace

Result<Decimal> readShown(std::string_view text, GroupMark group) {
    std::string_view digits = trimmed(text);
    if (digits.empty()) return fail(ErrorCode::EmptyText);
    bool negative = false;
    for (const std::string_view minus : {std::string_view{"-"}, std::string_view{"−"}})
        if (digits.starts_with(minus)) {
            negative = true;
            digits.remove_prefix(minus.size());
        }
    const auto plain = plainDigits(digits);
    if (!plain || plain->empty()) return fail(Error{ErrorCode::NotADecimal}.with("found", text));
    if (const auto mark = digits.find_first_of(".,");
        mark != std::string_view::npos && mayBeGrouped(digits, mark, group)) {
        const std::string whole{digits.substr(0, mark)}, part{digits.substr(mark + 1)};
        return fail(Error{ErrorCode::AmountAmbiguous}
                        .with("found", text)
                        .with("decimal", whole + "." + part)
                        .with("grouped", whole + part));
    }
    if (static_cast<std::size_t>(std::ranges::count_if(*plain, isDigit)) > kMostDigits)
        return fail(Error{ErrorCode::AmountTooLong}.with("found", text));
    const auto decimal = Decimal::read(*plain);
    if (!decimal) return fail(Error{ErrorCode::NotADecimal}.with("found", text));
    return negative ? -*decimal : *decimal;
}

GroupMark groupMarkHere() {
    const QString mark = QLocale{}.groupSeparator();
    if (mark == QLatin1String{","}) return GroupMark::Comma;
    if (mark == QLatin1String{"."}) return GroupMark::Point;
    return GroupMark::Unknown;
}

}  // namespace nettare
