#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/support/json.h"
#include "core/support/result.h"

namespace nettare {

// A draft is a recipe document as JSON; an edit is a value that changes it. Places are paths like
// JSON pointers, but an entry of a list is named by its id where it has one: "/lines/oil/amount",
// and by its index where it has none: "/steps/2/text". The empty place is the whole document.

/// A member gets another value; nothing stands for "not there".
struct SetMember {
    std::string place;
    std::optional<Json> before, after;
};

/// An entry of a list comes to stand at an index; a list that is not there is made.
struct InsertEntry {
    std::string list;  ///< place of the list
    std::size_t at = 0;
    Json entry;
};

/// The entry at an index goes; a list that becomes empty stays, unless the insert made it.
struct RemoveEntry {
    std::string list;
    std::size_t at = 0;
    Json entry;             ///< what stood there
    bool dropList = false;  ///< the list goes as well: it was made by the insert
};

/// The entry of an index moves; `to` is its index afterwards.
struct MoveEntry {
    std::string list;
    std::size_t from = 0, to = 0;
};

using Change = std::variant<SetMember, InsertEntry, RemoveEntry, MoveEntry>;

/// What the cook did, for the words of undo.
enum class EditKind {
    Title,
    Note,
    Yield,
    Portion,
    Target,
    Amount,
    Food,
    Preparation,
    AddLine,
    RemoveLine,
    MoveLine,
    Way,
    AddStep,
    ChangeStep,
    RemoveStep,
    MoveStep,
    Reading,
    Unbind,
    Assumption,
    BringBack,
};
[[nodiscard]] std::string_view nameOf(EditKind kind);

/// One thing that the cook did: its changes apply together, in order.
struct Edit {
    EditKind kind{};
    std::string subject;  ///< what it was done to, as the cook calls it: "olive oil"
    std::vector<Change> changes;
};

/// The document after the edit. Fails: EditDoesNotFit (a place, index or `before` that the document
/// does not have); nothing is changed then.
[[nodiscard]] Result<Json> applied(Json document, const Edit& edit);

/// The edit that takes this one back.
[[nodiscard]] Edit inverseOf(const Edit& edit);

/// The two edits as one, where both set the same single member of the same subject, as typing
/// does; else nothing.
[[nodiscard]] std::optional<Edit> merged(const Edit& first, const Edit& second);

/// True where the edit leaves every document as it was.
[[nodiscard]] bool changesNothing(const Edit& edit);

/// The JSON form, for the journal.
[[nodiscard]] Json editJson(const Edit& edit);
/// Fails like readRecipe() does, with a pointer.
[[nodiscard]] Result<Edit> readEdit(const Json& json);

}  // namespace nettare
