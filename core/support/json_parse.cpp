#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/support/json.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// 1-based number of the line that holds the byte at `position`.
int lineOf(std::string_view text, std::size_t position) {
    return 1 + static_cast<int>(std::ranges::count(text.substr(0, position), '\n'));
}

/// Builds our value from the library's events, and refuses duplicates and depth on the way.
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
    bool end_object() override { return close(); }
    bool start_array(std::size_t) override { return open(Json::array()); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override {
        if (stack_.back().members()->size() >= kJsonMembers) {
            error_ = Error{ErrorCode::TooManyItems}.with("most", std::to_string(kJsonMembers));
            error_.pointer = pointer();
            return false;
        }
        if (stack_.back().find(name) != nullptr) {
            error_ = Error{ErrorCode::JsonDuplicateKey}.with("key", name).at(pointer());
            return false;
        }
        keys_.back() = std::move(name);
        return true;
    }

    bool parse_error(std::size_t position, const std::string& lastToken,
                     const nlohmann::detail::exception& cause) override {
        const bool overflow = cause.id == 406;
        error_ = Error{overflow ? ErrorCode::JsonNumberTooLarge : ErrorCode::JsonSyntax}.with(
            "found", lastToken);
        const std::string_view before = text_.substr(0, std::min(position, text_.size()));
        error_.line = lineOf(text_, before.size());
        const std::size_t lineStart = before.rfind('\n');
        const std::size_t start = lineStart == std::string_view::npos ? 0 : lineStart + 1;
        error_.column = static_cast<int>(codePoints(before.substr(start)));
        return false;
    }

    [[nodiscard]] Json takeRoot() { return std::move(root_); }
    [[nodiscard]] const Error& error() const { return error_; }

private:
    std::string pointer() const {
        std::string path;
        for (std::size_t level = 0; level + 1 < stack_.size(); ++level) {
            const Json::Array* items = stack_[level].items();
            path = items != nullptr ? pointerTo(path, items->size())
                                    : pointerTo(path, std::string_view{keys_[level]});
        }
        return path;
    }

    bool place(Json value) {
        if (stack_.empty()) {
            root_ = std::move(value);
            return true;
        }
        if (stack_.back().items() != nullptr)
            stack_.back().append(std::move(value));
        else
            stack_.back().set(keys_.back(), std::move(value));
        return true;
    }

    bool open(Json container) {
        if (stack_.size() >= kJsonDepth) {
            error_ = Error{ErrorCode::JsonTooDeep}.with("most", std::to_string(kJsonDepth));
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
    Json root_;
    Error error_;
};

}  // namespace

Result<Json> parseJson(std::string_view text) {
    if (const std::size_t good = utf8Prefix(text); good < text.size()) {
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
