#include "app/words/error_sentence.h"

#include <string_view>

#include "app/words/bench_templates.h"
#include "app/words/error_templates.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kLongestPath = 1000;

/// "recipe.json, line 3, column 7" or "recipe.json, /lines/2/unit".
std::string placeOf(const Error& error) {
    std::string place = shortened(error.file, kLongestPath);
    const auto append = [&](const std::string& part) {
        if (!place.empty()) place += ", ";
        place += part;
    };
    if (error.line > 0) append("line " + std::to_string(error.line));
    if (error.column > 0) append("column " + std::to_string(error.column));
    if (!error.pointer.empty()) append(shortened(error.pointer, 120));
    if (const std::string_view user = error.value("used_by"); !user.empty())
        place += " (used by " + shortened(user, kLongestPath) + ")";
    return place;
}

/// "a → b → a" as "a uses b, which uses a".
std::string wayRound(std::string_view path) {
    constexpr std::string_view kArrow = " → ";
    std::string words;
    std::string_view separator;
    for (std::string_view rest = path; !rest.empty();) {
        const std::size_t end = rest.find(kArrow);
        (words += separator) += rest.substr(0, end);
        separator = separator.empty() ? " uses " : ", which uses ";
        if (end == std::string_view::npos) break;
        rest.remove_prefix(end + kArrow.size());
    }
    return words;
}

std::string valueOf(const Error& error, std::string_view name) {
    if (error.code == ErrorCode::RecipeCycle && name == "path") return wayRound(error.value(name));
    return std::string{error.value(name)};
}

/// The template with each {name} replaced by the error's value of that name.
std::string filled(std::string_view text, const Error& error) {
    std::string sentence;
    while (!text.empty()) {
        const std::size_t open = text.find('{');
        sentence += text.substr(0, open);
        if (open == std::string_view::npos) break;
        const std::size_t close = text.find('}', open);
        sentence +=
            shortened(valueOf(error, text.substr(open + 1, close - open - 1)), kLongestPath);
        text.remove_prefix(close + 1);
    }
    return sentence;
}

/// Some sentences depend on what an error tells.
std::string_view textOf(const Error& error) {
    if (!error.value("other").empty())
        if (const auto ofTwo = benchTemplateOfTwo(error.code); !ofTwo.empty()) return ofTwo;
    if (error.value("known").empty())
        if (const auto ofNone = benchTemplateOfNone(error.code); !ofNone.empty()) return ofNone;
    return templateFor(error.code);
}

}  // namespace

std::string errorSentence(const Error& error) {
    const std::string place = placeOf(error);
    const std::string sentence = filled(textOf(error), error);
    return place.empty() ? sentence : place + ": " + sentence;
}

}  // namespace nettare
