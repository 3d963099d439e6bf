#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/edit/edit.h"

namespace nettare {

/// Puts an edit together against the document that it is for. Indices are those that the lists have
/// after the changes before.
class EditDraft {
public:
    /// The document must outlive this. The subject is cut where it is long.
    EditDraft(const Json& document, EditKind kind, std::string_view subject);

    /// Sets a member, or takes it away; no change where it is so already.
    void set(const std::string& place, std::optional<Json> after);
    /// Inserts into a list, appends to it, each making it where it is not there.
    void insert(const std::string& list, std::size_t at, Json entry);
    void append(const std::string& list, Json entry);
    /// Takes away the entry, which stood there from the beginning; the list goes with its last one.
    void remove(const std::string& list, std::size_t at);
    void move(const std::string& list, std::size_t from, std::size_t to);

    [[nodiscard]] Edit take() { return std::move(edit_); }
    /// The edit, if the document is a recipe after it; else the error of readRecipe().
    [[nodiscard]] Result<Edit> takeChecked();

private:
    [[nodiscard]] std::size_t sizeOf(const std::string& list) const;

    const Json& document_;
    Edit edit_;
    std::map<std::string, std::ptrdiff_t> grown_;  ///< entries more than in the document, by list
};

// What edits ask of a document.

/// The text of a member, empty where there is none.
[[nodiscard]] std::string_view textAt(const Json& object, std::string_view key);

/// The items of a list of the document; none where it is not there.
[[nodiscard]] const Json::Array& itemsOf(const Json& object, std::string_view key);

/// The entry of that id. Fails: UnknownReference.
[[nodiscard]] Result<const Json*> entryNamed(const Json& document, std::string_view list,
                                             std::string_view id);

/// A text that a member at that place accepts: 1 to `most` code points on one plain line. Fails:
/// EmptyText, TextTooLong, TextNotClean, at the place.
[[nodiscard]] Result<Json> typedText(const std::string& place, std::string_view typed,
                                     std::size_t most);

/// An id made from a name that no entry of the list has yet: "olive-oil", "olive-oil-2".
[[nodiscard]] std::string freshId(const Json& document, std::string_view list,
                                  std::string_view name);

/// What the cook calls a line: the name of its food.
[[nodiscard]] std::string_view nameOfLine(const Json& document, const Json& line);

}  // namespace nettare
