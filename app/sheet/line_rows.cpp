#include "app/sheet/line_rows.h"

#include <QCoreApplication>

#include <algorithm>
#include <charconv>

#include "app/sheet/document_texts.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/line_figures.h"
#include "app/sheet/line_note_texts.h"
#include "app/sheet/optional_line.h"
#include "core/edit/line_amount.h"
#include "core/publish/number_text.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

struct RowWords {
    Q_DECLARE_TR_FUNCTIONS(LineRows)
};

constexpr std::string_view kLines = "/lines/";

Cell& rowCell(LineRow& row, LineColumn column) {
    return row.cells[static_cast<int>(column)];
}

/// What is said of the amount of a line, however far it is typed.
LineEntry amountOf(const Json& line) {
    LineEntry entry;
    entry.toTaste = line.find("to_taste") != nullptr;
    entry.amount = memberText(&line, "amount");
    if (line.find("unit") != nullptr) entry.unit = memberText(&line, "unit");
    if (line.find("piece") != nullptr) entry.piece = memberText(&line, "piece");
    if (const Json* each = line.find("each"))
        entry.each = MeasuredAmount{memberText(each, "amount"), memberText(each, "unit")};
    const std::string fill = memberText(&line, "fill");
    for (const Word<Fill>& word : kFillWords)
        if (word.word == fill) entry.fill = word.meaning;
    return entry;
}

/// What stands in muted ink beside the food: "large · optional · beaten".
QString besideFood(const Json& line, const QString& preparation) {
    const QString rest = withOptional(line, preparation);
    const QString size = QString::fromStdString(memberText(&line, "size"));
    if (size.isEmpty() || rest.isEmpty()) return size + rest;
    return size + QStringLiteral(" · ") + rest;
}

LineRow typedRow(const Json& document, const Json& line) {
    LineRow row;
    const LineEntry entry = amountOf(line);
    const std::string food =
        memberText(entryIn(document, "foods", memberText(&line, "food")), "name");
    row.id = memberText(&line, "id");
    row.amount = QString::fromStdString(lineAmountText(entry, food));
    row.food = QString::fromStdString(food);
    row.preparation = QString::fromStdString(memberText(&line, "preparation"));
    rowCell(row, LineColumn::Amount) = textCell(row.amount);
    rowCell(row, LineColumn::Ingredient) = textCell(row.food, besideFood(line, row.preparation));
    for (const LineColumn column : {LineColumn::Grams, LineColumn::Spread, LineColumn::Energy})
        rowCell(row, column) = numberCell({});
    return row;
}

void addLineFigures(LineRow& row, const LineFigures& figures, bool dimmed) {
    const Role ink = dimmed ? Role::Ink2 : Role::Ink;
    Cell& ingredient = rowCell(row, LineColumn::Ingredient);
    if (!figures.left.isEmpty()) {
        const QString left = RowWords::tr("less %1 g left").arg(figures.left);
        ingredient.muted =
            ingredient.muted.isEmpty() ? left : ingredient.muted + QStringLiteral(" · ") + left;
    }
    Cell& grams = rowCell(row, LineColumn::Grams);
    grams = numberCell(figures.grams);
    grams.ink = ink;
    Cell& spread = rowCell(row, LineColumn::Spread);
    spread = numberCell(figures.spread);
    spread.ink = Role::Ink2;
    Cell& way = rowCell(row, LineColumn::Way);
    way = wayCell(figures.way ? markOf(*figures.way) : Mark::None, figures.wayWords);
    way.muted = figures.otherWays;
    way.ink = ink;
    Cell& energy = rowCell(row, LineColumn::Energy);
    energy = figures.kcal ? numberCell(QString::fromStdString(numberAt(0, *figures.kcal)))
                          : noDataCell();
    energy.ink = ink;
    rowCell(row, LineColumn::Share) = shareCell(
        figures.shareOfMost, RowWords::tr("%1 % of the energy")
                                 .arg(QString::fromStdString(numberAt(0, 100 * figures.share))));
}

/// The cook assumed the grams for another amount.
bool isAssumedScaled(const Json& line, const LineFigures& figures) {
    const Json* assumed = line.find("assumed");
    return figures.way == Way::Assumed && assumed != nullptr && assumed->find("for") != nullptr;
}

/// The cell of a failing line that the pointer is about.
LineColumn columnOf(const std::string& pointer) {
    for (const std::string_view member : {"/food", "/preparation", "/size"})
        if (pointer.ends_with(member)) return LineColumn::Ingredient;
    return LineColumn::Amount;
}

}  // namespace

std::optional<std::size_t> failingLine(const DraftSession& draft) {
    if (!draft.failure() || !draft.failure()->pointer.starts_with(kLines)) return {};
    const std::string& pointer = draft.failure()->pointer;
    std::size_t index = 0;
    const char* const first = pointer.data() + kLines.size();
    const auto [end, wrong] = std::from_chars(first, pointer.data() + pointer.size(), index);
    return wrong == std::errc{} ? std::optional{index} : std::nullopt;
}

std::vector<LineRow> lineRows(const DraftSession& draft) {
    std::vector<LineRow> rows;
    const Json::Array& lines = entriesIn(draft.document(), "lines");
    const auto figures =
        draft.evaluation() ? lineFigures(*draft.evaluation()) : std::vector<LineFigures>{};
    const auto margin = marginTexts(draft);
    rows.reserve(lines.size());
    for (const Json& line : lines) {
        rows.push_back(typedRow(draft.document(), line));
        const auto found = std::ranges::find(figures, rows.back().id, &LineFigures::id);
        if (found == figures.end()) continue;
        addLineFigures(rows.back(), *found, draft.failure().has_value());
        const auto at = static_cast<std::size_t>(found - figures.begin());
        rowCell(rows.back(), LineColumn::Margin) = findingCell(margin[at]);
        if (isAssumedScaled(line, *found))
            rowCell(rows.back(), LineColumn::Way).text =
                RowWords::tr("%1, scaled").arg(found->wayWords);
    }
    if (const auto failing = failingLine(draft); failing && *failing < rows.size())
        rowCell(rows[*failing], columnOf(draft.failure()->pointer)).problem =
            draftSentence(draft.document(), *draft.failure());
    return rows;
}

}  // namespace nettare
