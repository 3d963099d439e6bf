#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "core/food/piece_word.h"
#include "core/nutrition/next_act.h"
#include "core/nutrition/share_name.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

/// Below this narrowing the reader is told what stays.
constexpr double kLittle = 0.25;

/// "prawns", "bulbs of fennel": what is counted of a food.
std::string piecesOfFood(const std::string& piece, const std::string& food) {
    if (piece.empty()) return food;
    if (samePiece(piece, food)) return pluralOf(food);
    return fmt::format("{} of {}", pluralOf(piece), food);
}

const Line* lineOfSeries(const Recipe& recipe, std::size_t series) {
    const auto uses = [&](const Line& line) {
        return line.series && line.series->series == series;
    };
    const auto found = std::ranges::find_if(recipe.lines, uses);
    return found == recipe.lines.end() ? nullptr : &*found;
}

/// Pieces weighed at once, as the first reading has them.
int piecesTogether(const Dossier& dossier, const SeriesData& series) {
    return series.readings.empty() ? 1 : dossier.readings[series.readings.front()].pieces;
}

/// "bulbs of fennel"; as many pieces as the first reading had: "lots of 6 prawns"; of a ratio "lots
/// of fennel, before and after".
std::string moreOf(const Dossier& dossier, const SeriesData& series, const std::string& food) {
    if (series.kind == SeriesKind::Ratio) return fmt::format("lots of {}, before and after", food);
    const std::string pieces = piecesOfFood(series.of, food);
    const int together = piecesTogether(dossier, series);
    return together == 1 ? pieces : fmt::format("lots of {} {}", together, pieces);
}

std::string twoMoreOf(const Dossier& dossier, std::size_t index) {
    const SeriesData& series = dossier.series[index];
    const Line* line = lineOfSeries(dossier.main(), index);
    return moreOf(dossier, series, line != nullptr ? line->name : series.name);
}

std::string finishedPieces(const Dossier& dossier) {
    const Recipe& recipe = dossier.main();
    if (!recipe.pieceSeries) return fmt::format("two finished {}, one by one", recipe.piecesWord);
    const int together = piecesTogether(dossier, dossier.series[*recipe.pieceSeries]);
    return together == 1
               ? fmt::format("two more finished {}, one by one", recipe.piecesWord)
               : fmt::format("two more lots of {} finished {}", together, recipe.piecesWord);
}

std::string_view whatStays(ShareKind kind) {
    switch (kind) {
        case ShareKind::Weighing:
            return "the steps of the scale are {}, and only a finer scale can narrow it";
        case ShareKind::Series:
            return "the scatter of the pieces stays, however many are weighed";
        case ShareKind::Label:
            return "the label's own rounding is {} and no scale can narrow it";
        case ShareKind::Table:
            return "the table's own spread is {} and no scale can narrow it";
        case ShareKind::Measure:
            return "what a measure weighs is {} and no single act here narrows it";
        case ShareKind::Stated:
            return "what was stated is {} and no scale can narrow it";
        case ShareKind::Assumption:
            return "what the recipe leaves open is {} and no single act here narrows it";
        case ShareKind::Share:
            return "the share of one piece stays, however well the batch is known";
    }
    return {};
}

constexpr std::size_t kShareKinds = 8;

/// Why the interval stays as wide as it is.
std::string reasonFor(const std::vector<BudgetShare>& shares) {
    std::array<double, kShareKinds> byKind{};
    for (const BudgetShare& share : shares)
        byKind.at(static_cast<std::size_t>(share.kind)) += share.share;
    const auto largest = std::ranges::max_element(byKind);
    const auto kind = static_cast<ShareKind>(largest - byKind.begin());
    const std::string_view part = *largest > 0.5 ? "the larger part" : "the largest part";
    return fmt::format(fmt::runtime(whatStays(kind)), part);
}

/// With as many decimals as it takes to see a difference.
std::string narrowing(const ComponentFacts& facts, double before, double after) {
    constexpr int kMoreDecimals = 3;
    int decimals = facts.decimals;
    while (decimals < facts.decimals + kMoreDecimals &&
           halfWidthText(decimals, before) == halfWidthText(decimals, after))
        ++decimals;
    return fmt::format("would narrow {} {} to {}", halfWidthText(decimals, before), facts.unit,
                       halfWidthText(decimals, after));
}

}  // namespace

std::string actText(const Act& act, const Dossier& dossier) {
    const Recipe& recipe = dossier.main();
    switch (act.kind) {
        case ActKind::WeighLine:
            return "Weigh the " + recipe.lines[act.index].name;
        case ActKind::WeighTwoMore:
            return "Weigh two more " + twoMoreOf(dossier, act.index);
        case ActKind::WeighTwo: {
            const Line& line = recipe.lines[act.index];
            return fmt::format("Weigh two {}, one by one", piecesOfFood(line.piece, line.name));
        }
        case ActKind::ReadLabel:
            return "Read the label of the " + dossier.foods[act.index].name;
        case ActKind::WeighDish:
            return "Weigh the dish after cooking";
        case ActKind::WeighPieces:
            return "Weigh " + finishedPieces(dossier);
        case ActKind::CountPieces:
            return fmt::format("Count the {}", recipe.piecesWord);
        case ActKind::SayResidue:
            return fmt::format("Say what {} is made of",
                               residueCalled(dossier, numberOf(0, act.index)));
    }
    return {};
}

std::string outcomeText(Component component, const NextAct& next) {
    if (next.shares.empty()) return "nothing in it is uncertain";
    const ActOutcome* best = next.best();
    if (best == nullptr) return reasonFor(next.shares);
    std::string text = narrowing(factsOf(component), next.halfWidth, best->halfWidth);
    if (best->halfWidth < next.halfWidth * (1 - kLittle)) return text;
    return fmt::format("{}; {}", text, reasonFor(next.shares));
}

}  // namespace nettare
