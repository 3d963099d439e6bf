#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/decimal.h"
#include "core/support/json.h"
#include "core/support/result.h"

namespace nettare {

/// A word of a document and what it stands for.
template <class T>
struct Word {
    std::string_view word;  ///< as documents write it
    T meaning;
};

/// The word for a meaning; empty where the list has none.
template <class T, std::size_t N>
[[nodiscard]] std::string_view wordFor(T meaning, const std::array<Word<T>, N>& known) {
    for (const Word<T>& word : known)
        if (word.meaning == meaning) return word.word;
    return {};
}

/// Which decimals a member accepts.
enum class NumberSign { Any, NotNegative, Positive };

/// Reads the members of one JSON object, notes the first error with its pointer, and at the end
/// refuses members that nobody asked for. After an error the answers are empty and mean nothing, so
/// that one look at the failure at the end is enough. The reader keeps views of the keys and of the
/// Json: both outlive it.
class ObjectReader {
public:
    /// `failure` is shared by all readers of a document and outlives them.
    ObjectReader(const Json& json, std::string pointer, std::optional<Error>& failure);

    /// Whether the member is there, of whatever kind; finish() lets it pass from then on.
    [[nodiscard]] bool has(std::string_view key);
    /// Text of 1 to `most` code points on one plain line (isPlainLine), not of spaces only. Notes
    /// MissingKey, WrongKind, EmptyText, TextTooLong, TextNotClean.
    [[nodiscard]] std::string text(std::string_view key, std::size_t most);
    /// The optional ones answer nothing where the member is missing, else they are as strict.
    [[nodiscard]] std::optional<std::string> optionalText(std::string_view key, std::size_t most);
    /// An array of 1 to `most` texts, each of 1 to `length` code points, as strict as text().
    [[nodiscard]] std::vector<std::string> texts(std::string_view key, std::size_t most,
                                                 std::size_t length);
    /// An identifier: a-z, 0-9 and '-', at most 64, not starting with '-'. Notes NotAnIdentifier.
    [[nodiscard]] std::string id(std::string_view key);
    [[nodiscard]] std::optional<std::string> optionalId(std::string_view key);
    /// An array of identifiers, at least one where the key must be there.
    [[nodiscard]] std::vector<std::string> ids(std::string_view key, std::size_t most);
    [[nodiscard]] std::vector<std::string> optionalIds(std::string_view key, std::size_t most);
    /// An ISO 8601 time with its offset, as isTimeForm() says. Notes NotATime.
    [[nodiscard]] std::string time(std::string_view key);
    /// A decimal string: up to six digits, up to six decimals. Notes NotADecimal, NegativeMass or
    /// NotPositive.
    [[nodiscard]] Decimal decimal(std::string_view key, NumberSign sign);
    [[nodiscard]] std::optional<Decimal> optionalDecimal(std::string_view key, NumberSign sign);
    /// The member of whatever kind. Notes MissingKey; null then.
    [[nodiscard]] const Json* value(std::string_view key) { return take(key, true); }
    /// A JSON number, as computed values are. Notes WrongKind.
    [[nodiscard]] double number(std::string_view key);
    [[nodiscard]] std::optional<double> optionalNumber(std::string_view key);
    /// A JSON number that is whole and from `low` to `high`, both within 2^53. Notes OutOfRange.
    [[nodiscard]] long long wholeNumber(std::string_view key, long long low, long long high);
    /// False where the member is missing.
    [[nodiscard]] bool optionalFlag(std::string_view key);

    /// What the member's word stands for; notes NotOneOf with all words there are.
    template <class T, std::size_t N>
    [[nodiscard]] T oneOf(std::string_view key, const std::array<Word<T>, N>& known) {
        const std::string found = text(key, 40);
        for (const Word<T>& word : known)
            if (word.word == found) return word.meaning;
        if (!failure_) note(ErrorCode::NotOneOf, key, found, list(known));
        return known.front().meaning;
    }

    /// Exactly one of the keys must be there; answers which, by its place in `keys`. Notes
    /// OneOfNeeded.
    std::size_t exactlyOneOf(std::span<const std::string_view> keys);

    /// The member as an object or the items of an array (of min to max), each with its pointer.
    [[nodiscard]] ObjectReader object(std::string_view key);
    struct Item {
        const Json& json;
        std::string pointer;
    };
    /// Notes TooFewItems or TooManyItems; a missing member has no items where `least` is 0.
    [[nodiscard]] std::vector<Item> items(std::string_view key, std::size_t least,
                                          std::size_t most);

    /// Refuses members that were not asked for.
    void finish();

    [[nodiscard]] const std::string& pointer() const { return pointer_; }
    [[nodiscard]] std::optional<Error>& failure() { return failure_; }

private:
    template <class T, std::size_t N>
    static std::string list(const std::array<Word<T>, N>& known) {
        std::string all;
        for (const Word<T>& word : known) (all += all.empty() ? "" : ", ") += word.word;
        return all;
    }

    /// The member, or null where it is missing or something failed before.
    const Json* take(std::string_view key, bool needed);
    /// Keeps an error of that member, unless there is one already: the first is the one to correct.
    void note(ErrorCode code, std::string_view key, std::string_view found = {},
              std::string_view known = {});
    std::string checkedText(std::string_view key, const Json& value, std::size_t most);

    const Json& json_;
    std::string pointer_;
    std::optional<Error>& failure_;
    std::vector<std::string_view> asked_;  ///< keys that finish() lets pass
};

/// True for the form of identifiers: a-z, 0-9, '-', 1 to 64 characters, not starting with '-'.
[[nodiscard]] bool isIdentifier(std::string_view text);

/// What a JSON value is, in one word: "text", "number", "object" ...
[[nodiscard]] std::string_view kindOf(const Json& json);

}  // namespace nettare
