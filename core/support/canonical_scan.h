#pragma once

#include <optional>
#include <string_view>

namespace nettare {

/// Walks over an object of canonical JSON (writeJson) from left to right, without making a tree of
/// it. The caller asks for members in the order of their keys. After anything that was not
/// expected, isWhole() is false and answers mean nothing.
class CanonicalScan {
public:
    explicit CanonicalScan(std::string_view text) : rest_{text} { take("{"); }

    /// Whether the next member has that key; then its value is next.
    [[nodiscard]] bool begins(std::string_view key);
    /// A text on one plain line (isPlainLine) of 1 to `most` code points, not of spaces only. One
    /// with an escape is not expected.
    [[nodiscard]] std::string_view text(std::size_t most);
    /// A whole number from `low` to `high`, both within 2^53, as writeJson() writes it.
    [[nodiscard]] long long wholeNumber(long long low, long long high);

    /// Steps over the bytes, which must come next.
    void take(std::string_view bytes);
    /// The same where they do; false where not.
    [[nodiscard]] bool tries(std::string_view bytes);
    /// The members of an object inside begin anew, until it is closed.
    void open();
    void close();

    /// Notes that something was not as expected.
    void spoil() { sound_ = false; }
    void need(bool isSo) { sound_ = sound_ && isSo; }
    [[nodiscard]] bool isSound() const { return sound_; }
    /// Whether everything was expected, and the object ends here.
    [[nodiscard]] bool isWhole() const { return sound_ && rest_ == "}"; }

private:
    std::string_view rest_;
    bool first_ = true;  ///< no member of the innermost object yet
    bool sound_ = true;
};

}  // namespace nettare
