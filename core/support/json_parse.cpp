#include <algorithm>
#include <nlohmann/json.hpp>
#include <numeric>

#include "core/support/json.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// 1-based number of the line that holds the byte at `position`.
int lineOf(std::string_view text, std::size_t position) {
    return 1 + static_cast<int>(std::ranges::count(text.substr(0, position), '\n'));
}

/// Where the last line of `before` begins.
std::size_t lineStart(std::string_view before) {
    const std::size_t feed = before.rfind('\n');
    return feed == std::string_view::npos ? 0 : feed + 1;
}

/// What stands at the position, with what leads to it on its line: up to 20 bytes before, and the
/// word or the one character there.
std::string_view around(std::string_view text, std::size_t position) {
    constexpr std::size_t kBefore = 20;
    std::size_t start = lineStart(text.substr(0, position));
    if (position - start > kBefore) start = position - kBefore;
    // Not to begin in the middle of a character.
    while (start < position && (static_cast<unsigned char>(text[start]) & 0xC0U) == 0x80U) ++start;
    const auto inWord = [](char c) {
        const std::string_view ends = " \t\r\n,:[]{}\"";
        return ends.find(c) == std::string_view::npos;
    };
    std::size_t end = position;
    while (end < text.size() && inWord(text[end])) ++end;
    return trimmed(text.substr(start, std::max(end, position + 1) - start));
}

/// Builds our value from the library's events, and refuses duplicates, depth and size on the
/// way, before a hostile text fills the memory.
class JsonBuilder : public nlohmann::json_sax<nlohmann::json> {
public:
    explicit JsonBuilder(std::string_view text) : text_{text} {}

    bool null() override { return place(Json{}); }
    bool boolean(bool value) override { return place(Json{value}); }
    bool number_integer(number_integer_t value) override {
        return place(Json{static_cast<double>(value)});
    }
    bool number_unsigned(number_unsigned_t value) override {
        return place(Json{static_cast<double>(value)});
    }
    bool number_float(number_float_t value, const string_t&) override { return place(Json{value}); }
    bool string(string_t& value) override { return place(Json{std::move(value)}); }
    bool binary(binary_t&) override { return false; }
    bool start_object(std::size_t) override { return open(Json::object()); }
    bool end_object() override { return sortMembers() && close(); }
    bool start_array(std::size_t) override { return open(Json::array()); }
    bool end_array() override { return close(); }

    /// The key waits until its value is complete, which may take many events.
    bool key(string_t& name) override {
        if (stack_.back().members()->size() >= kJsonMembers) return tooMany(kJsonMembers);
        keys_.back() = std::move(name);
        return true;
    }

    bool parse_error(std::size_t read, const std::string& lastToken,
                     const nlohmann::detail::exception& cause) override {
        constexpr int kOutOfRange = 406;  // the library's number for it
        // `read` counts the byte at fault; one more than there are is the end of the text.
        if (read > text_.size()) return endsEarly();
        const std::size_t position = read > 0 ? read - 1 : 0;
        const bool overflow = cause.id == kOutOfRange;
        error_ = overflow ? Error{ErrorCode::JsonNumberTooLarge}.with("found", lastToken)
                          : Error{ErrorCode::JsonSyntax}.with("found", around(text_, position));
        const std::string_view before = text_.substr(0, position);
        error_.line = lineOf(text_, position);
        error_.column = 1 + static_cast<int>(codePoints(before.substr(lineStart(before))));
        return false;
    }

    [[nodiscard]] Json takeRoot() { return std::move(root_); }
    [[nodiscard]] const Error& error() const { return error_; }

private:
    /// Where the innermost open container stands. A list does not count its open item yet, so that
    /// its size is that item's index.
    std::string pointer() const {
        std::string path;
        for (std::size_t level = 0; level + 1 < stack_.size(); ++level) {
            const Json::Array* items = stack_[level].items();
            path = items != nullptr ? pointerTo(path, items->size())
                                    : pointerTo(path, std::string_view{keys_[level]});
        }
        return path;
    }

    bool tooMany(std::size_t most) {
        error_ = Error{ErrorCode::TooManyItems}.with("most", std::to_string(most)).at(pointer());
        return false;
    }

    /// A file of blanks is told apart from one that was cut.
    bool endsEarly() {
        const bool nothing = trimmed(text_).empty();
        error_ = Error{nothing ? ErrorCode::JsonEmpty : ErrorCode::JsonEndsEarly};
        if (!nothing) error_.line = lineOf(text_, text_.size());
        return false;
    }

    /// Puts a complete value where it belongs: into the innermost open container, or at the root.
    bool place(Json value) {
        if (++values_ > kJsonValues) return tooMany(kJsonValues);
        if (stack_.empty()) {
            root_ = std::move(value);
            return true;
        }
        if (stack_.back().items() != nullptr)
            stack_.back().append(std::move(value));
        else
            stack_.back().members()->push_back({std::move(keys_.back()), std::move(value)});
        return true;
    }

    /// Members come as they are written and are sorted once: setting them one by one would move
    /// most of them again for each key that comes before.
    bool sortMembers() {
        Json::Object& written = *stack_.back().members();
        std::vector<std::size_t> order(written.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        const auto keyOf = [&](std::size_t i) { return std::string_view{written[i].key}; };
        std::ranges::sort(order, {}, keyOf);
        const auto twice = std::ranges::adjacent_find(order, {}, keyOf);
        if (twice != order.end()) {
            const std::string_view key = keyOf(*twice);
            error_ = Error{key.empty() ? ErrorCode::EmptyKey : ErrorCode::JsonDuplicateKey}
                         .with("key", key)
                         .at(pointer());
            return false;
        }
        Json::Object sorted;
        sorted.reserve(written.size());
        for (const std::size_t i : order) sorted.push_back(std::move(written[i]));
        written = std::move(sorted);
        return true;
    }

    bool open(Json container) {
        if (stack_.size() >= kJsonDepth) {
            error_ = Error{ErrorCode::JsonTooDeep}.with("most", std::to_string(kJsonDepth));
            error_.pointer = pointer();
            return false;
        }
        stack_.push_back(std::move(container));
        keys_.emplace_back();
        return true;
    }

    bool close() {
        Json done = std::move(stack_.back());
        stack_.pop_back();
        keys_.pop_back();
        return place(std::move(done));
    }

    std::string_view text_;
    std::vector<Json> stack_;        ///< containers still open
    std::vector<std::string> keys_;  ///< for each open container, the key being read
    std::size_t values_ = 0;         ///< placed so far, containers included
    Json root_;
    Error error_;
};

}  // namespace

Result<Json> parseJson(std::string_view text) {
    // A NUL is UTF-8 and never JSON: the text is of another encoding.
    const std::size_t good = std::min(utf8Prefix(text), text.find('\0'));
    if (good < text.size()) {
        Error error{ErrorCode::JsonNotUtf8};
        error.line = lineOf(text, good);
        return fail(error);
    }
    JsonBuilder builder{text};
    if (!nlohmann::json::sax_parse(text.begin(), text.end(), &builder))
        return fail(builder.error());
    return builder.takeRoot();
}

}  // namespace nettare
