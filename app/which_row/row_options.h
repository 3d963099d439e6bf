#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/session/evaluation.h"
#include "core/edit/edit.h"
#include "core/publish/compared_figures.h"
#include "db/food_tables.h"

namespace nettare {

/// A row of a table that a cook could mean by a food of the draft, with what it does to the
/// figures.
struct RowOption {
    TableFood food;
    bool current = false;
    Edit edit;  ///< gives the food this row; nothing in it for the current one
    /// Of the basis asked for, this row less the current one; nothing where it gives no figures.
    std::optional<PerComponent<FigureDifference>> differences;
    std::vector<TargetVerdict> verdicts;
    std::optional<Error> failure;  ///< why it gives none
};

/// A food of the draft that has a table row.
struct RowQuestion {
    std::string food;  ///< id of its entry
    std::string name;  ///< as the cook calls it
    TableRow row;
};

/// The foods of a document that have a row, in their order.
[[nodiscard]] std::vector<RowQuestion> rowQuestions(const Json& document);

/// The row of the question first, then at most `most` others of the same thing, as a search for
/// the thing and for the cook's name of it finds them. Fails: TableUnreadable.
[[nodiscard]] Result<std::vector<TableFood>> rowsOfOneThing(const FoodTables& tables,
                                                            const TableFood& current,
                                                            const std::string& cooksName,
                                                            std::size_t most);

/// What each of the rows does to the draft of that document. `now` is its evaluation.
[[nodiscard]] std::vector<RowOption> rowOptions(const Json& document, const Closure& closure,
                                                const Evaluation& now, const RowQuestion& question,
                                                std::vector<TableFood> rows, Basis basis);

}  // namespace nettare
