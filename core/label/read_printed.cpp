#include "core/label/read_printed.h"

#include <algorithm>

#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::string_view kDigits = "0123456789";
/// Longer than any package prints an amount.
constexpr std::size_t kLongestPrinted = 60;

/// In lower case, with one plain space where several or those of a page stand, and with the micro
/// sign for the Greek letter.
std::string foldedPrint(std::string_view printed) {
    std::string text = lowerAscii(printed);
    // No-break, figure, thin and narrow no-break space.
    for (const std::string_view space : {"\u00a0", "\u2007", "\u2009", "\u202f"})
        text = replaced(text, space, " ");
    text = replaced(replaced(text, "\u03bc", "µ"), "\u2019", "'");
    std::string folded;
    for (const std::string_view word : words(text)) {
        if (!folded.empty()) folded += ' ';
        folded += word;
    }
    return folded;
}

/// "1 567" and "1'567" as "1567"; the figure itself where what parts it does not part groups of
/// three.
std::string withoutGaps(std::string_view figure) {
    const std::size_t whole = std::min(figure.find_first_of(".,"), figure.size());
    std::string joined;
    std::size_t digits = 0;
    for (const char sign : figure.substr(0, whole)) {
        const bool parts = sign == ' ' || sign == '\'';
        if (parts && (joined.empty() || joined.front() == '0' || digits > 3 ||
                      (digits != joined.size() && digits != 3)))
            return std::string{figure};
        digits = parts ? 0 : digits + 1;
        if (!parts) joined += sign;
    }
    if (digits != joined.size() && digits != 3) return std::string{figure};
    return joined + std::string{figure.substr(whole)};
}

/// "1,200" as "1200"; nothing where the commas do not part groups of three.
std::optional<std::string> withoutGroups(std::string_view figure) {
    const std::size_t whole = std::min(figure.find('.'), figure.size());
    const auto groups = split(figure.substr(0, whole), ',');
    const std::string_view first = groups.front();
    const bool opens = !first.empty() && first.size() <= 3 && first.front() != '0';
    if (groups.size() > 1 && !opens) return std::nullopt;
    for (std::size_t i = 1; i < groups.size(); ++i)
        if (groups[i].size() != 3) return std::nullopt;
    return replaced(figure.substr(0, whole), ",", "") + std::string{figure.substr(whole)};
}

/// "0.5" for ".5".
std::optional<std::string> withZero(std::optional<std::string> figure) {
    if (figure && figure->starts_with('.')) figure->insert(0, 1, '0');
    return figure;
}

/// The figure in front of the unit or of nothing. Any other unit stays, and makes the text
/// unreadable.
std::string_view withoutUnit(std::string_view text, std::string_view own) {
    const std::size_t unitAt = text.find_last_of(kDigits) + 1;
    const std::string_view unit = trimmed(text.substr(unitAt));
    const bool micrograms = own == "µg" && (unit == "mcg" || unit == "µg" || unit == "ug");
    return own.empty() || unit == lowerAscii(own) || micrograms ? text.substr(0, unitAt) : text;
}

}  // namespace

// No food has 1125 g of anything in it, so in grams a comma before three digits is a decimal mark
// too.
std::string withDecimalPoint(std::string_view figure, std::string_view unit) {
    const std::size_t comma = figure.find(',');
    std::string text{figure};
    if (comma == 0 || comma == std::string_view::npos || comma != figure.rfind(',') ||
        figure.find('.') != std::string_view::npos)
        return text;
    const std::size_t decimals = figure.size() - comma - 1;
    const bool group = decimals == 3 && unit != "g" && figure.front() != '0';
    if (decimals > 0 && !group) text[comma] = '.';
    return text;
}

std::optional<PrintedAmount> readPrinted(std::string_view printed, std::string_view unit) {
    if (printed.size() > kLongestPrinted) return std::nullopt;
    const std::string folded = foldedPrint(printed);
    std::string_view text = folded;
    bool lessThan = false;
    for (const std::string_view opening : {"contains less than ", "less than ", "<"}) {
        if (!text.starts_with(opening)) continue;
        lessThan = true;
        text = trimmed(text.substr(opening.size()));
        break;
    }
    const std::string figureText = withoutGaps(trimmed(withoutUnit(text, unit)));
    const auto plain = withZero(withoutGroups(withDecimalPoint(figureText, unit)));
    const auto figure = plain ? Decimal::read(*plain) : std::nullopt;
    if (!figure || plain->front() == '-') return std::nullopt;
    return PrintedAmount{lessThan, *figure};
}

Decimal lastDigitOf(Decimal figure) {
    return {1, -figure.decimals()};
}

}  // namespace nettare
