#include "app/which_row/row_options.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/edit/edit_draft.h"
#include "core/edit/food_edits.h"
#include "core/food/row_kin.h"

namespace nettare {

namespace {

/// Hits looked through for rows of one thing.
constexpr std::size_t kHitsLookedAt = 120;

std::optional<TableRow> rowOfEntry(const Json& food) {
    const Json* row = food.find("table");
    if (row == nullptr) return std::nullopt;
    return TableRow{std::string{textAt(*row, "table")}, std::string{textAt(*row, "release")},
                    std::string{textAt(*row, "number")}};
}

/// Rows for some words, those of the same thing as `current` only, behind those that are there.
Result<void> addRows(const FoodTables& tables, const std::string& words, const TableFood& current,
                     std::size_t most, std::vector<TableFood>& rows) {
    const auto search = tables.search(words, kHitsLookedAt);
    if (!search) return fail(search.error());
    for (const FoodHit& hit : search->hits) {
        if (rows.size() > most) break;
        const bool there = std::ranges::find(rows, hit.row, &TableFood::row) != rows.end();
        if (there || !isSameThing(hit.name, current.name)) continue;
        auto food = tables.find(hit.row);
        if (!food) return fail(food.error());
        if (*food) rows.push_back(std::move(**food));
    }
    return {};
}

/// What the option's figures differ in, or why it has none.
void compare(const Json& document, const Closure& closure, const Evaluation& now, Basis basis,
             RowOption& option) {
    const auto tried = applied(document, option.edit);
    if (!tried) {
        option.failure = tried.error();
        return;
    }
    Closure with = closure;
    if (with.food(option.food.row) == nullptr) with.foods.push_back(option.food);
    const auto then = evaluated(*tried, with, nullptr, now.cooked.meaning);
    if (!then) {
        option.failure = then.error();
        return;
    }
    const Evaluation& after = **then;
    option.verdicts = after.verdicts;
    if (!now[basis] || !after[basis]) return;
    option.differences =
        comparedFigures({now.document, now.dossier, now.cooked}, *now[basis],
                        {after.document, after.dossier, after.cooked}, *after[basis], Batches::One);
}

}  // namespace

std::vector<RowQuestion> rowQuestions(const Json& document) {
    std::vector<RowQuestion> questions;
    for (const Json& food : itemsOf(document, "foods"))
        if (const auto row = rowOfEntry(food))
            questions.push_back(
                {std::string{textAt(food, "id")}, std::string{textAt(food, "name")}, *row});
    return questions;
}

Result<std::vector<TableFood>> rowsOfOneThing(const FoodTables& tables, const TableFood& current,
                                              const std::string& cooksName, std::size_t most) {
    std::vector<TableFood> rows{current};
    const std::string thing = fmt::format("{}", fmt::join(thingOf(current.name), " "));
    for (const std::string& words : {thing, cooksName})
        if (const auto added = addRows(tables, words, current, most, rows); !added)
            return fail(added.error());
    return rows;
}

std::vector<RowOption> rowOptions(const Json& document, const Closure& closure,
                                  const Evaluation& now, const RowQuestion& question,
                                  std::vector<TableFood> rows, Basis basis) {
    std::vector<RowOption> options;
    for (TableFood& food : rows) {
        RowOption option;
        option.current = food.row == question.row;
        option.food = std::move(food);
        if (const auto edit = setTableRow(document, question.food, option.food.row)) {
            option.edit = *edit;
            compare(document, closure, now, basis, option);
        } else {
            option.failure = edit.error();
        }
        options.push_back(std::move(option));
    }
    return options;
}

}  // namespace nettare
