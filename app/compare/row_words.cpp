#include "app/compare/row_words.h"

#include "app/compare/calm_difference.h"

#include <QCoreApplication>

#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct ComparedRowWords {
    Q_DECLARE_TR_FUNCTIONS(ComparedRowWords)
};

/// What a line's grams and energy are written with; less would hide what counts as a change.
constexpr int kGramsDecimals = 1;
constexpr int kEnergyDecimals = 0;

QString rowText(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

RowKind kindOf(LineChange change) {
    switch (change) {
        case LineChange::Same:
            break;
        case LineChange::Changed:
            return RowKind::Changed;
        case LineChange::Added:
            return RowKind::Added;
        case LineChange::Removed:
            return RowKind::Removed;
    }
    return RowKind::Same;
}

/// Energy of one side: its number, or the least that it can be.
struct EnergySide {
    double kcal = 0, kcalAtLeast = 0;
    bool complete = true;
};

void writeEnergy(ComparedSide& side, const EnergySide& energy, const std::string& exact) {
    side.energyAtLeast = !energy.complete;
    side.energyKcal =
        energy.complete ? rowText(exact)
                        : rowText(numberAt(kEnergyDecimals, energy.kcalAtLeast, Direction::Floor));
}

EnergySide energyOf(const SheetLine& line) {
    return {line.kcal, line.kcalAtLeast, line.kcalComplete};
}

EnergySide energyOf(const Figure& figure) {
    return {figure.value, figure.atLeast, figure.complete()};
}

ComparedSide sideOf(const SheetLine& line) {
    ComparedSide side;
    side.amount = rowText(line.amount);
    side.food = rowText(line.name);
    side.preparation = rowText(line.preparation);
    return side;
}

QString openWord() {
    return ComparedRowWords::tr("open");
}

ComparedRow rowOf(const ComparedLine& line) {
    ComparedRow row;
    row.kind = kindOf(line.change);
    const auto grams = calmDifference(kGramsDecimals, line.before ? line.before->grams : 0,
                                      line.after ? line.after->grams : 0);
    const auto energy = calmDifference(kEnergyDecimals, line.before ? line.before->kcal : 0,
                                       line.after ? line.after->kcal : 0);
    if (line.before) {
        row.left = sideOf(*line.before);
        row.left->grams = rowText(grams.before);
        writeEnergy(*row.left, energyOf(*line.before), energy.before);
    }
    if (line.after) {
        row.right = sideOf(*line.after);
        row.right->grams = rowText(grams.after);
        writeEnergy(*row.right, energyOf(*line.after), energy.after);
    }
    // A line counts as the same below 0.1 g; what its numbers then show is still told.
    const bool same = row.kind == RowKind::Same;
    if (!same || grams.before != grams.after) row.gramsChange = rowText(grams.difference);
    if (!same || energy.before != energy.after)
        row.energyChange = line.kcalComplete ? rowText(energy.difference) : openWord();
    return row;
}

ComparedRow totalOf(const Comparison& comparison) {
    const FigureDifference& energy = comparison.batchEnergy;
    const auto grams =
        calmDifference(kGramsDecimals, comparison.gramsBefore, comparison.gramsAfter);
    const auto kcal = calmDifference(kEnergyDecimals, energy.before.value, energy.after.value);
    ComparedRow row;
    row.kind = RowKind::Total;
    row.left.emplace();
    row.right.emplace();
    row.left->amount = row.right->amount = ComparedRowWords::tr("Batch");
    row.left->grams = rowText(grams.before);
    row.right->grams = rowText(grams.after);
    writeEnergy(*row.left, energyOf(energy.before), kcal.before);
    writeEnergy(*row.right, energyOf(energy.after), kcal.after);
    row.gramsChange = rowText(grams.difference);
    row.energyChange =
        energy.kind == DifferenceKind::NotComparable ? openWord() : rowText(kcal.difference);
    return row;
}

}  // namespace

std::vector<ComparedRow> rowWords(const Comparison& comparison) {
    std::vector<ComparedRow> rows;
    for (const ComparedLine& line : comparison.lines) rows.push_back(rowOf(line));
    rows.push_back(totalOf(comparison));
    return rows;
}

}  // namespace nettare
