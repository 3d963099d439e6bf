#include "core/edit/food_row_edits.h"

#include <algorithm>

#include "core/edit/edit_draft.h"
#include "core/food/own_food.h"
#include "core/support/json_reader.h"

namespace nettare {

namespace {

/// The row that a food entry names, empty texts where something is missing.
TableRow rowIn(const Json& food) {
    const Json* row = food.find("table");
    if (row == nullptr) return {};
    return {std::string{textAt(*row, "table")}, std::string{textAt(*row, "release")},
            std::string{textAt(*row, "number")}};
}

Json jsonOf(const TableRow& row) {
    Json json = Json::object();
    json.set("table", Json{row.table}).set("release", Json{row.release});
    return json.set("number", Json{row.number});
}

}  // namespace

std::vector<TableRow> rowsOf(const Json& document) {
    std::vector<TableRow> rows;
    for (const Json& food : itemsOf(document, "foods")) {
        TableRow row = rowIn(food);
        const bool whole = !row.table.empty() && !row.release.empty() && !row.number.empty();
        if (whole && std::ranges::find(rows, row) == rows.end()) rows.push_back(std::move(row));
    }
    return rows;
}

std::optional<Edit> moveOwnFoods(const Json& document, const std::vector<std::string>& numbers,
                                 const TableRow& to, std::string_view subject) {
    EditDraft draft{document, EditKind::Food, subject};
    for (const Json& food : itemsOf(document, "foods")) {
        const TableRow row = rowIn(food);
        const bool moves =
            isOwn(row) && row != to && std::ranges::find(numbers, row.number) != numbers.end();
        if (moves)
            draft.set(pointerTo(pointerTo("/foods", textAt(food, "id")), "table"), jsonOf(to));
    }
    Edit edit = draft.take();
    if (edit.changes.empty()) return std::nullopt;
    return edit;
}

}  // namespace nettare
