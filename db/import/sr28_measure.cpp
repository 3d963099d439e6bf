#include "db/import/sr28_measure.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include "core/food/piece_word.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// Words for units, as the publisher writes them and as table files do; the longer first.
constexpr std::array<std::pair<std::string_view, std::string_view>, 21> kUnitWords{{
    {"cubic inches", "cubic in"},
    {"cubic inch", "cubic in"},
    {"tablespoons", "tbsp"},
    {"tablespoon", "tbsp"},
    {"teaspoons", "tsp"},
    {"teaspoon", "tsp"},
    {"fluid ounce", "fl_oz"},
    {"quarts", "quart"},
    {"liters", "l"},
    {"quart", "quart"},
    {"fl oz", "fl_oz"},
    {"liter", "l"},
    {"pints", "pint"},
    {"pint", "pint"},
    {"cups", "cup"},
    {"tbsp", "tbsp"},
    {"cup", "cup"},
    {"tsp", "tsp"},
    {"lb", "lb"},
    {"oz", "oz"},
    {"ml", "ml"},
}};

constexpr std::array<std::string_view, 9> kSizes{
    "extra large", "extra small", "large", "medium", "small", "jumbo", "mini", "thick", "thin"};

bool isSize(std::string_view words) {
    return std::ranges::find(kSizes, words) != kSizes.end();
}

/// Short words in full.
std::string wordByWord(std::string_view text) {
    std::string result;
    for (const std::string_view word : words(text)) {
        if (!result.empty()) result += ' ';
        if (word == "dia" || word == "dia." || word == "diam")
            result += "diameter";
        else
            result += word == "approx" || word == "approx." ? "about" : word;
    }
    return result;
}

/// 3-1/4" dia as 3 1/4 in diameter.
std::string spelledOut(std::string_view text) {
    std::string spelled;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool between = i > 0 && i + 1 < text.size() && text[i] == '-' && text[i - 1] >= '0' &&
                             text[i - 1] <= '9' && text[i + 1] >= '0' && text[i + 1] <= '9';
        if (text[i] == '"')
            spelled += " in";
        else
            spelled += between ? ' ' : text[i];
    }
    return wordByWord(spelled);
}

/// The words before the first comma or bracket, and what follows in parts.
std::pair<std::string, std::vector<std::string>> headAndParts(std::string_view written) {
    const std::size_t end = written.find_first_of(",(");
    std::string head{trimmed(written.substr(0, end))};
    std::vector<std::string> parts;
    while (end != std::string_view::npos && !written.empty()) {
        const std::size_t start = written.find_first_of(",()");
        if (start == std::string_view::npos) break;
        written.remove_prefix(start + 1);
        const std::string_view part = trimmed(written.substr(0, written.find_first_of(",()")));
        if (!part.empty()) parts.push_back(spelledOut(part));
    }
    return {std::move(head), std::move(parts)};
}

/// "onion" of "Onions, raw"; empty where the name does not begin with one plain word.
std::string pieceOf(std::string_view foodName) {
    const std::string first = lowerAscii(trimmed(foodName.substr(0, foodName.find(','))));
    const bool plain =
        !first.empty() && std::ranges::all_of(first, [](char c) { return c >= 'a' && c <= 'z'; });
    return plain ? singularOf(first) : std::string{};
}

std::string joinedParts(const std::vector<std::string>& parts) {
    std::string text;
    for (const std::string& part : parts) {
        if (!text.empty()) text += ", ";
        text += part;
    }
    return text;
}

/// "slice" with "large" beside it as "large slice"; a size alone as one of the food.
std::string pieceUnit(std::string head, std::vector<std::string>& parts, std::string_view foodName,
                      bool several) {
    if (several) head = singularOf(head);
    if (!parts.empty() && isSize(parts.front()) && !isSize(head)) {
        head.insert(0, parts.front() + " ");
        parts.erase(parts.begin());
        return head;
    }
    for (const std::string_view size : kSizes)
        if (head.size() > size.size() + 1 && head.ends_with(size) &&
            head[head.size() - size.size() - 1] == ' ' && !isSize(head))
            return std::string{size} + " " + head.substr(0, head.size() - size.size() - 1);
    if (head.ends_with(" whole") && isSize(head.substr(0, head.size() - 6)))
        head.resize(head.size() - 6);
    const std::string piece = pieceOf(foodName);
    return isSize(head) && !piece.empty() ? head + " " + piece : head;
}

}  // namespace

Sr28Measure readSr28Measure(std::string_view written, std::string_view foodName, bool several) {
    auto [head, parts] = headAndParts(written);
    const std::string lower = lowerAscii(head);
    for (const auto& [word, unit] : kUnitWords) {
        if (!lower.starts_with(word)) continue;
        if (head.size() > word.size() && head[word.size()] != ' ') continue;
        const std::string_view more = trimmed(std::string_view{head}.substr(word.size()));
        if (!more.empty()) parts.insert(parts.begin(), spelledOut(more));
        return {std::string{unit}, joinedParts(parts)};
    }
    // "thigh with skin" is a thigh.
    for (const std::string_view joint : {" with ", " without "}) {
        const std::size_t at = head.find(joint);
        if (at == std::string::npos || at == 0) continue;
        parts.insert(parts.begin(), head.substr(at + 1));
        head.resize(at);
    }
    std::string unit = pieceUnit(std::move(head), parts, foodName, several);
    if (unit.empty()) return {std::string{trimmed(written)}, {}};
    return {std::move(unit), joinedParts(parts)};
}

}  // namespace nettare
