#include "app/command_line/food_command.h"

#include <fmt/core.h>

#include <algorithm>
#include <ostream>

#include "app/command_line/food_page.h"
#include "app/command_line/show_recipe.h"
#include "core/publish/number_text.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kMostHits = 20;
constexpr std::size_t kLongestQuote = 200;
constexpr std::size_t kMostTaken = 3;

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) (text += text.empty() ? "" : " ") += word;
    return std::string{trimmed(text)};
}

/// "“courgete” was taken as courgette."
std::string slipSentence(const ForgivenSlip& slip) {
    std::string taken;
    for (std::size_t i = 0; i < std::min(slip.taken.size(), kMostTaken); ++i)
        taken += (i == 0 ? "" : " or ") + slip.taken[i];
    return fmt::format("“{}” was taken as {}.\n", shortened(slip.typed, kLongestQuote), taken);
}

/// The row that the words name: its number alone, or table, release and number.
Result<TableRow> rowOf(const std::string& text, const FoodTables& tables) {
    const std::size_t space = text.rfind(' ');
    const std::string number = space == std::string::npos ? text : text.substr(space + 1);
    for (const FoodTable& table : tables.tables()) {
        TableRow row{table.table(), table.release(), number};
        if (space != std::string::npos && row.text() != text) continue;
        const auto hit = table.hit(number);
        if (!hit) return fail(hit.error());
        if (*hit) return row;
    }
    return fail(ofArgument(
        "NUMBER", Error{ErrorCode::FoodNotFound}.with("found", shortened(text, kLongestQuote))));
}

const std::string& citationOf(const TableRow& row, const FoodTables& tables) {
    const auto isOf = [&](const FoodTable& table) { return table.isOf(row); };
    return std::ranges::find_if(tables.tables(), isOf)->citation();
}

}  // namespace

Result<void> showFoods(const FoodsCommand& command, DossierLoader& loader, std::ostream& out) {
    const std::string words = joined(command.words);
    if (words.empty()) return fail(ofArgument("WORDS", {ErrorCode::EmptyText}));
    const auto tables = loader.tables();
    if (!tables) return fail(tables.error());
    const auto found = (*tables)->search(words, kMostHits);
    if (!found) return fail(found.error());
    if (found->hits.empty())
        out << "No food of the table matches “" << shortened(words, kLongestQuote) << "”.\n";
    for (const ForgivenSlip& slip : found->slips) out << slipSentence(slip);
    for (const FoodHit& hit : found->hits)
        out << fmt::format("{:<18} {:>5} kcal/100 g  {} of {} known  {}\n", hit.row.text(),
                           hit.energyKcalPer100g ? numberAt(0, *hit.energyKcalPer100g) : "?",
                           hit.knownComponents, kComponentCount, hit.name);
    return {};
}

Result<void> showFood(const FoodCommand& command, DossierLoader& loader, std::ostream& out) {
    const std::string text = joined(command.number);
    if (text.empty()) return fail(ofArgument("NUMBER", {ErrorCode::EmptyText}));
    const auto tables = loader.tables();
    if (!tables) return fail(tables.error());
    const auto row = rowOf(text, **tables);
    if (!row) return fail(row.error());
    auto food = (*tables)->find(*row);
    if (!food) return fail(food.error());
    auto values = (*tables)->values(*row);
    if (!values) return fail(values.error());
    const FoodPage page{std::move(**food), std::move(*values), citationOf(*row, **tables)};
    out << (command.json ? writeJsonIndented(foodJson(page)) : foodText(page));
    return {};
}

}  // namespace nettare
