#include "core/support/canonical_scan.h"

#include <charconv>
#include <cmath>

#include "core/support/json.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// Plain ASCII is by far the most frequent.
bool isPlainAscii(std::string_view text) {
    for (const char c : text)
        if (c < 0x20 || c > 0x7E) return false;
    return true;
}

}  // namespace

bool CanonicalScan::begins(std::string_view key) {
    std::string_view at = rest_;
    if (!first_) {
        if (!at.starts_with(',')) return false;
        at.remove_prefix(1);
    }
    const bool named = at.size() >= key.size() + 3 && at.front() == '"' &&
                       at.substr(1, key.size()) == key && at.substr(key.size() + 1, 2) == "\":";
    if (!named) return false;
    rest_ = at.substr(key.size() + 3);
    first_ = false;
    return true;
}

std::string_view CanonicalScan::text(std::size_t most) {
    const std::size_t end = rest_.starts_with('"') ? rest_.find('"', 1) : std::string_view::npos;
    if (end == std::string_view::npos) {
        spoil();
        return {};
    }
    const std::string_view found = rest_.substr(1, end - 1);
    rest_.remove_prefix(end + 1);
    need(found.find('\\') == std::string_view::npos);
    need(isPlainAscii(found) || isPlainLine(found));
    need(!trimmed(found).empty() && (found.size() <= most || codePoints(found) <= most));
    return sound_ ? found : std::string_view{};
}

long long CanonicalScan::wholeNumber(long long low, long long high) {
    const std::string_view token = rest_.substr(0, rest_.find_first_of(",}]"));
    double number = 0;
    const auto [end, failure] = std::from_chars(token.data(), token.data() + token.size(), number);
    const bool within = failure == std::errc{} && end == token.data() + token.size() &&
                        number >= static_cast<double>(low) && number <= static_cast<double>(high) &&
                        number == std::floor(number);
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
