#include "core/nutrition/line_findings.h"

#include <algorithm>

#include "core/food/food_state.h"
#include "core/food/measure_scaling.h"
#include "core/nutrition/state_weighed.h"
#include "core/nutrition/weigh.h"

namespace nettare {

namespace {

/// What the rules look at.
struct Question {
    const Dossier& dossier;
    const Line& line;
    const Food& food;
    const LineGrams& grams;

    [[nodiscard]] const OpenWay& chosen() const { return grams.way(); }
};

using Findings = std::vector<LineFinding>;

/// A way before the chosen one is the better one.
std::optional<Way> ifBetter(const Question& question, std::size_t way) {
    if (way >= question.grams.chosen) return std::nullopt;
    return question.grams.ways[way].way;
}

void findDisagreement(const Question& question, Findings& findings) {
    for (std::size_t i = 0; i < question.grams.ways.size(); ++i) {
        if (i == question.grams.chosen) continue;
        const Disagreement apart = disagreement(question.chosen(), question.grams.ways[i]);
        if (!apart.beyondUncertainty) continue;
        LineFinding finding;
        finding.kind = LineFindingKind::WaysDisagree;
        finding.better = ifBetter(question, i);
        finding.way = i;
        finding.relative = apart.relative;
        findings.push_back(finding);
    }
}

/// A label that a document brings, as a row that tells its state.
TableFood asRow(const Food& food) {
    TableFood row;
    row.name = food.name;
    row.label = food.label;
    return row;
}

/// A label of 250 g prepared pasta says nothing of 250 g from the packet. Its own servings are of
/// what it speaks of.
void findPrepared(const Question& question, const TableFood& row, Findings& findings) {
    const bool prepared = row.label && row.label->state == LabelState::Prepared;
    const bool itsOwn = question.chosen().why.basis == WayBasis::LabelServings;
    if (!prepared || itsOwn || stateWeighed(question.dossier, question.line, question.chosen()))
        return;
    LineFinding finding;
    finding.kind = LineFindingKind::PreparedNotSaid;
    findings.push_back(finding);
}

void findState(const Question& question, Findings& findings) {
    const Food& food = question.food;
    const bool byLabel = food.label && !food.labelOfRow;
    const TableFood ofLabel = byLabel ? asRow(food) : TableFood{};
    const TableFood* const row = byLabel ? &ofLabel : food.table ? &*food.table : nullptr;
    const auto isMismatch = [&](const OpenWay& way) {
        const auto weighed = stateWeighed(question.dossier, question.line, way);
        return weighed && !holdsFor(*row, *weighed);
    };
    if (row == nullptr) return;
    if (!isMismatch(question.chosen())) return findPrepared(question, *row, findings);
    LineFinding finding;
    finding.kind = LineFindingKind::StateMismatch;
    finding.weighed = stateWeighed(question.dossier, question.line, question.chosen());
    finding.row = stateOf(*row);
    for (const OpenWay& way : question.grams.ways)
        if (!finding.better && !isMismatch(way)) finding.better = way.way;
    findings.push_back(finding);
}

void findScaling(const Question& question, Findings& findings) {
    const OpenWay& way = question.chosen();
    if (!way.why.measuresDisagree || !way.measure) return;
    for (const auto& pair : measuresThatDoNotScale(*question.food.table))
        if (pair.first == *way.measure || pair.second == *way.measure) {
            LineFinding finding;
            finding.kind = LineFindingKind::MeasuresDoNotScale;
            finding.measures = pair;
            findings.push_back(finding);
            return;
        }
}

void findRefuse(const Question& question, Findings& findings) {
    if (!question.chosen().trimmed || !question.chosen().why.edibleByRefuse) return;
    const auto doubt = refuseDoubt(*question.food.table);
    if (!doubt) return;
    LineFinding finding;
    finding.kind = LineFindingKind::RefuseDoubtful;
    finding.doubt = doubt;
    findings.push_back(finding);
}

void findBetter(const Question& question, Findings& findings) {
    if (question.grams.chosen == 0) return;
    LineFinding finding;
    finding.kind = LineFindingKind::BetterWayOpen;
    finding.way = 0;
    finding.better = question.grams.ways.front().way;
    findings.push_back(finding);
}

void findSize(const Question& question, Findings& findings) {
    if (!question.chosen().sizeNotSaid) return;
    LineFinding finding;
    finding.kind = LineFindingKind::SizeNotSaid;
    findings.push_back(finding);
}

/// Readings of the way that counts.
void findSmall(const Question& question, Findings& findings) {
    const Line& line = question.line;
    std::vector<std::size_t> readings;
    if (question.chosen().way == Way::Weighed) readings = line.weighed;
    if (question.chosen().way == Way::Series)
        readings = question.dossier.series[line.series->series].readings;
    for (const std::size_t reading : readings) {
        const auto share = coarseShareOf(question.dossier, reading);
        if (!share) continue;
        LineFinding finding;
        finding.kind = LineFindingKind::SmallReading;
        finding.reading = reading;
        finding.relative = *share;
        findings.push_back(finding);
    }
}

}  // namespace

std::vector<LineFinding> findingsOf(const Dossier& dossier, std::size_t recipe, std::size_t line,
                                    const LineGrams& grams) {
    Findings findings;
    const Line& asked = dossier.recipes[recipe].lines[line];
    const auto* food = std::get_if<FoodIndex>(&asked.what);
    if (food == nullptr || grams.ways.empty()) return findings;
    const Question question{dossier, asked, dossier.foods[food->index], grams};
    for (const auto find :
         {findDisagreement, findState, findScaling, findRefuse, findBetter, findSize, findSmall})
        find(question, findings);
    return findings;
}

}  // namespace nettare
