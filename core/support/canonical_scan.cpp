#include "core/support/canonical_scan.h"

#include <charconv>
#include <cmath>

#include "core/support/json.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// Of a text that is not all plain ASCII; white space of other kinds is never plain.
bool isOtherPlainLine(std::string_view text) {
    return text.find('\\') == std::string_view::npos && isPlainLine(text);
}

}  // namespace

bool CanonicalScan::begins(std::string_view key) {
    const std::size_t comma = first_ ? 0 : 1;
    if (rest_.size() < comma + key.size() + 3) return false;
    // Most members that are asked for are not there, and differ in their first letter.
    const std::string_view at = rest_.substr(comma);
    const bool named = at[1] == key.front() && at.front() == '"' &&
                       at.substr(1, key.size()) == key && at.substr(key.size() + 1, 2) == "\":";
    if (!named || (comma == 1 && rest_.front() != ',')) return false;
    rest_ = at.substr(key.size() + 3);
    first_ = false;
    return true;
}

std::string_view CanonicalScan::text(std::size_t most) {
    std::size_t end = 1;
    bool isPlainAscii = true, isBlank = true;
    for (; end < rest_.size() && rest_[end] != '"'; ++end) {
        const char c = rest_[end];
        isPlainAscii = isPlainAscii && c >= 0x20 && c <= 0x7E && c != '\\';
        isBlank = isBlank && c == ' ';
    }
    if (end >= rest_.size() || rest_.front() != '"') {
        spoil();
        return {};
    }
    const std::string_view found = rest_.substr(1, end - 1);
    rest_.remove_prefix(end + 1);
    need(!isBlank && (isPlainAscii || isOtherPlainLine(found)));
    need(found.size() <= most || codePoints(found) <= most);
    return sound_ ? found : std::string_view{};
}

long long CanonicalScan::wholeNumber(long long low, long long high) {
    double number = 0;
    const auto [end, failure] = std::from_chars(rest_.data(), rest_.data() + rest_.size(), number);
    const std::string_view token = rest_.substr(0, static_cast<std::size_t>(end - rest_.data()));
    const bool within = failure == std::errc{} && number >= static_cast<double>(low) &&
                        number <= static_cast<double>(high) && number == std::floor(number);
    need(within);
    need(within && numberText(number) == token);
    rest_.remove_prefix(token.size());
    return sound_ ? static_cast<long long>(number) : low;
}

bool CanonicalScan::tries(std::string_view bytes) {
    const bool there = rest_.starts_with(bytes);
    if (there) rest_.remove_prefix(bytes.size());
    return there;
}

void CanonicalScan::take(std::string_view bytes) {
    need(tries(bytes));
}

void CanonicalScan::open() {
    take("{");
    first_ = true;
}

void CanonicalScan::close() {
    take("}");
    first_ = false;
}

}  // namespace nettare
