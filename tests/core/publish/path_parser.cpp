#include "path_parser.h"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace path_parser {

namespace {

using boost::multiprecision::cpp_int;

constexpr std::string_view kMinus = "−";
constexpr std::string_view kGroup = "\u202F";
constexpr std::array<std::string_view, 5> kAfterUnit{" × ", " / ", " + ", " − ", ")"};

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Cuts a text off where it begins so.
bool takes(std::string_view& text, std::string_view start) {
    if (!text.starts_with(start)) return false;
    text.remove_prefix(start.size());
    return true;
}

Printed takeNumber(std::string_view& text) {
    const bool negative = takes(text, kMinus);
    if (text.empty() || !isDigit(text.front()))
        throw std::runtime_error("no number: " + std::string{text});
    Printed number;
    cpp_int digits = 0;
    cpp_int power = 1;
    bool point = false;
    while (!text.empty()) {
        if (takes(text, kGroup)) continue;
        if (!point && text.size() > 1 && text[0] == '.' && isDigit(text[1])) {
            point = true;
            text.remove_prefix(1);
        }
        if (!isDigit(text.front())) break;
        digits = digits * 10 + (text.front() - '0');
        if (point) power *= 10;
        number.decimals += point ? 1 : 0;
        text.remove_prefix(1);
    }
    number.value = Rational{negative ? cpp_int{-digits} : digits, power};
    return number;
}

void skipUnit(std::string_view& text) {
    std::size_t end = text.size();
    for (const std::string_view sign : kAfterUnit) end = std::min(end, text.find(sign));
    text.remove_prefix(end);
}

Rational takeSum(std::string_view& text);

Rational takeFactor(std::string_view& text) {
    if (takes(text, "(")) {
        Rational sum = takeSum(text);
        if (!takes(text, ")")) throw std::runtime_error("no bracket: " + std::string{text});
        return sum;
    }
    const bool negative = takes(text, kMinus);
    const Rational number = takeNumber(text).value;
    skipUnit(text);
    return negative ? Rational{-number} : number;
}

Rational takeProduct(std::string_view& text) {
    if (takes(text, "−(")) {
        text = std::string_view{text.data() - 1, text.size() + 1};
        return -takeProduct(text);
    }
    Rational product = takeFactor(text);
    while (true) {
        if (takes(text, " × "))
            product *= takeFactor(text);
        else if (takes(text, " / "))
            product /= takeFactor(text);
        else
            return product;
    }
}

Rational takeSum(std::string_view& text) {
    Rational sum = takeProduct(text);
    while (true) {
        if (takes(text, " + "))
            sum += takeProduct(text);
        else if (takes(text, " − "))
            sum -= takeProduct(text);
        else
            return sum;
    }
}

cpp_int tenTo(int power) {
    cpp_int ten = 1;
    for (int i = 0; i < power; ++i) ten *= 10;
    return ten;
}

/// Towards minus infinity.
cpp_int floorOf(const Rational& value) {
    const cpp_int top = numerator(value);
    const cpp_int bottom = denominator(value);
    const cpp_int whole = top / bottom;
    return top < 0 && whole * bottom != top ? cpp_int{whole - 1} : whole;
}

/// The nearest multiple of 10^-decimals, ties away from zero; decimals may be negative.
Rational nearest(const Rational& value, int decimals) {
    const Rational unit = decimals < 0 ? Rational{tenTo(-decimals)} : Rational{1, tenTo(decimals)};
    const Rational half{1, 2};
    const bool negative = value < 0;
    const Rational size = negative ? Rational{-value} : value;
    const Rational rounded = Rational{floorOf(size / unit + half)} * unit;
    return negative ? Rational{-rounded} : rounded;
}

Rational withTwelveDigits(const Rational& value) {
    if (value == 0) return 0;
    Rational size = abs(value);
    if (size < Rational{1, tenTo(12)}) return 0;
    int decimals = 11;
    for (; size >= 10; size /= 10) --decimals;
    for (; size < 1; size *= 10) ++decimals;
    return nearest(value, decimals);
}

bool prints(const Rational& result, const Row& row) {
    const Rational written = withTwelveDigits(result);
    const Rational unit{1, tenTo(row.value.decimals)};
    if (row.formula.ends_with(", rounded down"))
        return Rational{floorOf(written / unit)} * unit == row.value.value;
    if (row.formula.ends_with(", rounded up"))
        return Rational{-floorOf(-written / unit)} * unit == row.value.value;
    return nearest(written, row.value.decimals) == row.value.value;
}

Rational resultOf(const Row& row) {
    if (!row.formula.starts_with("sum of the") && !row.formula.starts_with("the step below"))
        return evaluated(row.formula);
    Rational sum = 0;
    for (const Row& below : row.below) sum += below.value.value;
    return sum;
}

Row readRow(std::string_view line) {
    Row row;
    while (takes(line, "    ")) ++row.depth;
    row.bounded = takes(line, "at least ");
    std::string_view head = line.substr(0, line.find("  "));
    row.value = takeNumber(head);
    const std::size_t equals = head.find(" = ");
    if (equals != std::string_view::npos) row.formula = head.substr(equals + 3);
    return row;
}

Row takeRow(const std::vector<Row>& rows, std::size_t& at) {
    Row row = rows.at(at++);
    while (at < rows.size() && rows[at].depth == row.depth + 1)
        row.below.push_back(takeRow(rows, at));
    return row;
}

}  // namespace

Rational evaluated(std::string_view formula) {
    for (const std::string_view end : {", rounded down", ", rounded up"})
        if (formula.ends_with(end)) formula.remove_suffix(end.size());
    Rational result = takeSum(formula);
    if (!formula.empty()) throw std::runtime_error("not read: " + std::string{formula});
    return result;
}

Row readPath(std::string_view text) {
    text.remove_prefix(text.find("\n\n") + 2);
    std::vector<Row> rows;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::string_view line = text.substr(0, end);
        const std::size_t at = line.find_first_not_of(' ');
        if (at != std::string_view::npos && line[at] != '(') rows.push_back(readRow(line));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    std::size_t at = 0;
    Row path = takeRow(rows, at);
    if (at != rows.size()) throw std::runtime_error("a row stands nowhere");
    return path;
}

std::string firstWrongRow(const Row& row, int& formulas) {
    if (!row.formula.empty()) {
        ++formulas;
        if (!prints(resultOf(row), row)) return row.formula;
    }
    for (const Row& below : row.below)
        if (std::string wrong = firstWrongRow(below, formulas); !wrong.empty()) return wrong;
    return {};
}

}  // namespace path_parser
