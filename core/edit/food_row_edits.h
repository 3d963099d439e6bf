#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/edit/edit.h"
#include "core/food/table_food.h"

namespace nettare {

/// The rows of tables that the foods of a document are, each once; what is half written is left
/// out.
[[nodiscard]] std::vector<TableRow> rowsOf(const Json& document);

/// Gives every food of the document that is one of these own foods, in whatever version, the row
/// `to`: one edit. `subject` is what the cook calls it. Nothing where no food is to move.
[[nodiscard]] std::optional<Edit> moveOwnFoods(const Json& document,
                                               const std::vector<std::string>& numbers,
                                               const TableRow& to, std::string_view subject);

}  // namespace nettare
