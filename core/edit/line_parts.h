#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "core/edit/edit_draft.h"
#include "core/edit/line_edits.h"

namespace nettare {

// What the edits of lines share.

/// The place of a line, or of a member of it.
[[nodiscard]] std::string linePlace(std::string_view line, std::string_view member = {});

/// Takes away the members that say how many grams the line is, but those that the edit sets
/// itself; answers which were there.
[[nodiscard]] std::vector<std::string> unbind(const Json& line, EditDraft& draft,
                                              std::initializer_list<std::string_view> but = {});

/// The id of the choice's food, which is added where the document does not have it. Fails:
/// UnknownReference.
[[nodiscard]] Result<std::string> foodFor(const Json& document, const FoodChoice& choice,
                                          EditDraft& draft);

/// A row as a food entry names it.
[[nodiscard]] Json rowJson(const TableRow& row);

/// A number alone counts pieces of the food: "2" of "eggs, whole" are 2 of the piece "egg".
[[nodiscard]] std::string ownPiece(std::string_view foodName);

/// Takes a food away where nothing but the line uses it.
void dropFoodOf(const Json& document, const Json& line, EditDraft& draft);

}  // namespace nettare
