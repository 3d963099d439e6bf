#include <fmt/core.h>

#include "core/publish/measure_text.h"
#include "core/publish/number_text.h"
#include "core/publish/path_work.h"

namespace nettare {

namespace {

/// Grams of a kept recipe that a line uses: by pieces, by weight or as batches.
PathDraft keptGramsDraft(PathWork& work, std::size_t outer, std::size_t index) {
    const Line& line = work.dossier.recipes[outer].lines[index];
    const std::size_t inner = std::get<RecipeIndex>(line.what).index;
    const Recipe& kept = work.dossier.recipes[inner];
    if (!line.weighed.empty()) {
        PathDraft readings = readingsDraft(work, line.weighed, line.name);
        if (line.weighedFactor == 1) return readings;
        PathDraft scaled = pathDraft(PathKind::Grams, "g", "weighed for another amount");
        scaled.by(std::move(readings), " g").byRatio(line.weighedFactor);
        return scaled.computed();
    }
    PathDraft draft = pathDraft(PathKind::Grams, "g", lineAmount(line));
    if (line.unit != nullptr && line.unit->kind == UnitKind::Mass) {
        draft.byRatio(line.amount.middle(), " " + std::string{line.unit->symbol});
        if (line.unit->symbol != "g") draft.by(pathNumber(line.unit->factor.value(), " g"));
        draft.step.way = Way::Assumed;
        return draft.computed();
    }
    draft.step.words += " of " + kept.title;
    draft.by(wholeDraft(work, inner), " g").byRatio(line.amount.middle());
    if (line.piece == kept.pieceWord || line.piece == kept.piecesWord)
        draft.by(pathNumber(kept.pieces.value()), true);
    return draft.computed();
}

/// "variance 36² s² / 6 + 36 s²; or 382.0 g by table, 7.9 %, more than their uncertainty".
std::string otherWaysText(const Line& line, const LineGrams& ways) {
    std::string text;
    const WayExplanation& why = ways.way().why;
    if (why.basis == WayBasis::OwnSeries && line.series->use == SeriesUse::Others)
        text = fmt::format("variance {0}² s² / {1} + {0} s²", shortNumber(line.amount.middle()),
                           why.series->pieces);
    for (const OpenWay& way : ways.ways) {
        if (&way == &ways.way()) continue;
        const Disagreement apart = disagreement(ways.way(), way);
        text += fmt::format("{}or {} g by {}, {} %{}", text.empty() ? "" : "; ",
                            numberAt(1, way.grams.value()), nameOf(way.way),
                            numberAt(1, 100 * apart.relative),
                            apart.beyondUncertainty ? ", more than their uncertainty" : "");
    }
    return text;
}

}  // namespace

PathDraft lineUsedDraft(PathWork& work, std::size_t recipe, std::size_t index) {
    const LineReport& report = work.gramsOf(recipe).lines[index];
    const Line& line = work.dossier.recipes[recipe].lines[index];
    if (!report.ways.ways.empty()) {
        PathDraft food = foodGramsDraft(work, recipe, index, report.ways.way());
        food.step.more = otherWaysText(line, report.ways);
        return food;
    }
    PathDraft draft = keptGramsDraft(work, recipe, index);
    if (line.tried == 1) return draft;
    PathDraft tried = pathDraft(PathKind::Grams, "g", "tried: another amount");
    tried.by(std::move(draft), " g").byRatio(line.tried);
    return tried.computed();
}

}  // namespace nettare
