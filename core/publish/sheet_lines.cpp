#include "core/publish/sheet_lines.h"

#include <algorithm>

#include "core/edit/line_amount.h"
#include "core/nutrition/student_t.h"

namespace nettare {

namespace {

/// The leaf of a line itself, or of the kept recipe that the line uses.
bool isOfLine(const Leaf& leaf, const std::string& id) {
    return leaf.path == id || (leaf.path.size() > id.size() && leaf.path[id.size()] == '/' &&
                               leaf.path.starts_with(id));
}

void addEnergy(const Leaf& leaf, const Composition& composition, SheetLine& line) {
    const double grams = leaf.grams.value();
    const ComponentAmount& energy = composition[Component::ENERC_KCAL];
    if (energy.origin != Origin::Missing) {
        const double kcal = grams * energy.perGram;
        line.kcal += kcal;
        line.kcalAtLeast += kcal;
        if (line.kcalAtMost) *line.kcalAtMost += kcal;
        return;
    }
    line.kcalComplete = false;
    line.kcalAtLeast += grams * energy.low;
    if (energy.high && line.kcalAtMost)
        *line.kcalAtMost += grams * *energy.high;
    else
        line.kcalAtMost.reset();
}

void addWay(const Line& line, const LineReport& report, SheetLine& row) {
    if (report.ways.ways.empty()) return;
    const OpenWay& way = report.ways.way();
    row.way = way.way;
    row.readings = way.way == Way::Weighed ? static_cast<int>(line.weighed.size()) : way.readings;
    row.scaled = way.scaled;
    row.trimmed = way.trimmed;
    row.sizeNotSaid = way.sizeNotSaid;
    row.spreadAssumed = way.spreadAssumed;
}

SheetLine rowOf(const LineEntry& entry, const Line& line, const LineReport& report,
                const Cooked& cooked) {
    SheetLine row;
    row.id = line.id;
    row.name = line.name;
    row.preparation = line.preparation;
    row.amount = line.toTaste ? "to taste" : lineAmountText(entry, line.name);
    row.counting = report.counting;
    row.grams = report.eaten.value();
    const Uncertainty uncertainty = uncertaintyOf(report.eaten);
    if (uncertainty.u != 0) row.halfWidth = coverageFactor(uncertainty.freedom) * uncertainty.u;
    row.leftOver = std::max(0.0, report.asUsed.value() - report.eaten.value());
    addWay(line, report, row);
    row.kcalAtMost = 0.0;
    for (const Leaf& leaf : cooked.eaten.leaves)
        if (isOfLine(leaf, line.id)) addEnergy(leaf, cooked.compositions[leaf.food], row);
    return row;
}

}  // namespace

std::vector<SheetLine> sheetLines(const RecipeDocument& document, const Dossier& dossier,
                                  const Cooked& cooked) {
    const Recipe& recipe = dossier.main();
    std::vector<SheetLine> rows;
    rows.reserve(recipe.lines.size());
    double kcal = 0;
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
        rows.push_back(rowOf(document.lines[i], recipe.lines[i], cooked.lines[i], cooked));
        kcal += rows.back().kcal;
    }
    if (kcal > 0)
        for (SheetLine& row : rows) row.energyShare = std::clamp(row.kcal / kcal, 0.0, 1.0);
    return rows;
}

}  // namespace nettare
