#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/support/result.h"

namespace nettare {

struct JsonMember;

/// A JSON value. Members of an object are kept sorted by key, so that writing is canonical.
/// Numbers are doubles, whole ones exact up to 2^53 in size: what a person typed or a pack printed
/// travels as text.
class Json {
public:
    using Array = std::vector<Json>;
    using Object = std::vector<JsonMember>;

    // Defined below JsonMember: clang 14 wants it complete where a Json is made.
    /// Null.
    Json();
    explicit Json(bool value);
    explicit Json(double value);
    explicit Json(std::string text);
    explicit Json(std::string_view text);
    /// Without this one a literal would become a bool.
    explicit Json(const char* text);

    /// Empty containers.
    [[nodiscard]] static Json array();
    [[nodiscard]] static Json object();

    [[nodiscard]] bool isNull() const { return std::holds_alternative<std::monostate>(value_); }
    /// The value of that kind; null where this is of another kind.
    [[nodiscard]] const bool* boolean() const { return std::get_if<bool>(&value_); }
    [[nodiscard]] const double* number() const { return std::get_if<double>(&value_); }
    [[nodiscard]] const std::string* text() const { return std::get_if<std::string>(&value_); }
    [[nodiscard]] const Array* items() const { return std::get_if<Array>(&value_); }
    [[nodiscard]] const Object* members() const { return std::get_if<Object>(&value_); }
    [[nodiscard]] Array* items() { return std::get_if<Array>(&value_); }
    [[nodiscard]] Object* members() { return std::get_if<Object>(&value_); }

    /// The member of that key, or null if this is no object or has none.
    [[nodiscard]] const Json* find(std::string_view key) const;
    [[nodiscard]] Json* find(std::string_view key);
    /// Sets or replaces a member; this becomes an object if it was none. Returns this.
    Json& set(std::string_view key, Json value);
    /// Takes a member away; nothing happens if there is none.
    void remove(std::string_view key);
    /// Appends an item; this becomes an array if it was none.
    void append(Json item);

    /// Same kind and content; then both write to the same text.
    friend bool operator==(const Json& a, const Json& b);

private:
    std::variant<std::monostate, bool, double, std::string, Array, Object> value_;
};

/// One member of an object.
struct JsonMember {
    std::string key;
    Json value;

    friend bool operator==(const JsonMember&, const JsonMember&) = default;
};

inline Json::Json() = default;
inline Json::Json(bool value) : value_{value} {}
inline Json::Json(double value) : value_{value} {}
inline Json::Json(std::string text) : value_{std::move(text)} {}
inline Json::Json(std::string_view text) : value_{std::string{text}} {}
inline Json::Json(const char* text) : value_{std::string{text}} {}

/// Reads one JSON text (RFC 8259, UTF-8). Refuses what the library would pass in silence: duplicate
/// keys, more than `kJsonDepth` levels, too many values. Errors carry line and column, or the
/// pointer: JsonNotUtf8, JsonEmpty, JsonEndsEarly, JsonSyntax, JsonNumberTooLarge,
/// JsonDuplicateKey, EmptyKey, JsonTooDeep, TooManyItems.
[[nodiscard]] Result<Json> parseJson(std::string_view text);

/// Deepest nesting, most members of one object and most values in all that parseJson accepts: a
/// recipe of 500 lines and 500 foods with full labels has about 80 000.
inline constexpr std::size_t kJsonDepth = 64;
inline constexpr std::size_t kJsonMembers = 1000;
inline constexpr std::size_t kJsonValues = 150'000;

/// Canonical text: keys sorted by bytes, no spaces, numbers by std::to_chars (shortest form), -0
/// written as 0. The number must be finite.
[[nodiscard]] std::string writeJson(const Json& value);

/// The same, indented by two spaces and ended by a line feed, for people and diffs.
[[nodiscard]] std::string writeJsonIndented(const Json& value);

/// The shortest decimal text that reads back as the same double; 0 for -0. Finite only.
[[nodiscard]] std::string numberText(double value);

/// A pointer with one more step, escaped as RFC 6901 asks.
[[nodiscard]] std::string pointerTo(std::string_view parent, std::string_view key);
[[nodiscard]] std::string pointerTo(std::string_view parent, std::size_t index);

}  // namespace nettare
