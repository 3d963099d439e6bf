#include "core/food/published_rows.h"

#include <fmt/core.h>

#include <algorithm>
#include <charconv>

#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::string_view kGap = "-";

Error brokenLine(int line, std::string_view expected, std::string_view found) {
    Error error = Error{ErrorCode::WrongFormat}.with("expected", expected).with("found", found);
    error.line = line;
    return error;
}

bool isDigits(std::string_view text) {
    return std::ranges::all_of(text, [](char sign) { return sign >= '0' && sign <= '9'; });
}

/// The whole field as a number in plain decimals; nothing where it is none.
template <class Number, class... Form>
std::optional<Number> fieldAsNumber(std::string_view field, Form... form) {
    Number number{};
    const auto [end, wrong] =
        std::from_chars(field.data(), field.data() + field.size(), number, form...);
    if (wrong != std::errc{} || end != field.data() + field.size()) return std::nullopt;
    return number;
}

}  // namespace

Result<std::vector<PublishedRow>> publishedRows(std::string_view text, std::string_view columns) {
    std::vector<PublishedRow> rows;
    const auto width = static_cast<std::size_t>(std::ranges::count(columns, '|')) + 1;
    bool named = false;
    int line = 0;
    for (const std::string_view content : split(text, '\n')) {
        ++line;
        if (content.empty() || content.front() == '#') continue;
        if (!named) {
            if (content != columns) return fail(brokenLine(line, columns, content));
            named = true;
            continue;
        }
        PublishedRow row{.line = line, .fields = split(content, '|')};
        if (row.fields.size() != width)
            return fail(brokenLine(line, fmt::format("{} fields", width),
                                   fmt::format("{} fields", row.fields.size())));
        rows.push_back(std::move(row));
    }
    if (!named) return fail(brokenLine(line, columns, ""));
    return rows;
}

std::string_view PublishedFields::next() {
    return at_ < row_.fields.size() ? row_.fields[at_++] : std::string_view{};
}

bool PublishedFields::nextIsGap() const {
    return at_ < row_.fields.size() && row_.fields[at_] == kGap;
}

void PublishedFields::refuse(std::string_view expected) {
    if (fault_) return;
    fault_ = brokenLine(row_.line, expected, at_ == 0 ? "" : row_.fields[at_ - 1]);
}

std::string PublishedFields::text() {
    const std::string_view field = next();
    if (field.empty() || field == kGap) refuse("a text");
    return std::string{field};
}

std::string PublishedFields::digits(std::size_t count) {
    const std::string_view field = next();
    if (field.size() != count || !isDigits(field)) refuse(fmt::format("{} digits", count));
    return std::string{field};
}

int PublishedFields::whole(int least, int most) {
    const auto number = fieldAsNumber<int>(next());
    if (!number || *number < least || *number > most)
        refuse(fmt::format("a whole number from {} to {}", least, most));
    return number.value_or(least);
}

double PublishedFields::number(double least, double most) {
    const auto number = fieldAsNumber<double>(next(), std::chars_format::fixed);
    // What is no number at all compares false, and so is refused.
    const bool within = number && *number >= least && *number <= most;
    if (!within) refuse(fmt::format("a number from {} to {}", least, most));
    return within ? *number : least;
}

std::optional<std::string> PublishedFields::digitsOrGap(std::size_t count) {
    if (!nextIsGap()) return digits(count);
    ++at_;
    return std::nullopt;
}

std::optional<int> PublishedFields::wholeOrGap(int least, int most) {
    if (!nextIsGap()) return whole(least, most);
    ++at_;
    return std::nullopt;
}

std::optional<double> PublishedFields::numberOrGap(double least, double most) {
    if (!nextIsGap()) return number(least, most);
    ++at_;
    return std::nullopt;
}

}  // namespace nettare
