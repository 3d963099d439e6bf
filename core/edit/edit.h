#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
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

    friend bool operator==(const SetMember&, const SetMember&) = default;
};

/// An entry of a list comes to stand at an index.
struct InsertEntry {
    std::string list;  ///< place of the list
    std::size_t at = 0;
    Json entry;
    bool makeList = false;  ///< the list is not there yet

    friend bool operator==(const InsertEntry&, const InsertEntry&) = default;
};

/// The entry at an index goes.
struct RemoveEntry {
    std::string list;
    std::size_t at = 0;
    Json entry;             ///< what stood there
    bool dropList = false;  ///< the list goes as well: this is its only entry

    friend bool operator==(const RemoveEntry&, const RemoveEntry&) = default;
};

/// The entry of an index moves; `to` is its index afterwards.
struct MoveEntry {
    std::string list;
    std::size_t from = 0, to = 0;

    friend bool operator==(const MoveEntry&, const MoveEntry&) = default;
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
    Counting,
    Optional,
    Residue,
    Stated,
    OtherRow,
    BringBack,
};
[[nodiscard]] std::string_view nameOf(EditKind kind);

/// One thing that the cook did: its changes apply together, in order.
struct Edit {
    EditKind kind{};
    std::string subject;  ///< what it was done to, as the cook calls it: "olive oil"
    std::vector<Change> changes;

    friend bool operator==(const Edit&, const Edit&) = default;
};

/// Changes the document. Answers EditDoesNotFit where a place, an index or what should stand there
/// is another in this document, with that place; nothing is changed then.
[[nodiscard]] std::optional<Error> apply(const Edit& edit, Json& document);

/// The document after the edit. Fails as apply() does.
[[nodiscard]] Result<Json> applied(Json document, const Edit& edit);

/// The edit that takes this one back.
[[nodiscard]] Edit inverseOf(const Edit& edit);

/// The two edits as one, where the second goes on with the first as typing does: both of one kind
/// and subject, both set members only and the same one first. Else nothing.
[[nodiscard]] std::optional<Edit> merged(const Edit& first, const Edit& second);

/// True where none of its changes changes anything.
[[nodiscard]] bool changesNothing(const Edit& edit);

/// The JSON form, for the journal.
[[nodiscard]] Json editJson(const Edit& edit);
/// Fails like readRecipe() does, with a pointer.
[[nodiscard]] Result<Edit> readEdit(const Json& json);

}  // namespace nettare
