#include "core/publish/finding_sentence.h"

#include <fmt/core.h>

#include <cmath>

#include "core/nutrition/weigh.h"
#include "core/publish/measure_text.h"
#include "core/publish/number_text.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// A finding with what it is about, on the way to words.
struct Found {
    const Dossier& dossier;
    const Line& line;
    const Food& food;
    const LineGrams& grams;
    const LineFinding& finding;
};

/// "; the table has it": the way that is open without the finding.
std::string betterText(const Found& found) {
    if (!found.finding.better) return {};
    return fmt::format("; take the way “{}”", nameOf(*found.finding.better));
}

std::string disagreeText(const Found& found) {
    const OpenWay& other = found.grams.ways[*found.finding.way];
    const double relative = found.finding.relative;
    return fmt::format("{} says {} g, {} {} than {} g by {}: more than their uncertainty explains",
                       nameOf(other.way), shortNumber(other.grams.value()),
                       percent(std::fabs(relative)), relative < 0 ? "less" : "more",
                       shortNumber(found.grams.way().grams.value()),
                       nameOf(found.grams.way().way)) +
           betterText(found);
}

/// Of the row that has them, or of the food where its label does.
const std::string& nameOfValues(const Food& food) {
    const bool byRow = food.table && (!food.label || food.labelOfRow);
    return byRow ? food.table->name : food.name;
}

std::string stateText(const Found& found) {
    const std::string_view weighed = wordFor(*found.finding.weighed, kFoodStateWords);
    const std::string row = found.finding.row
                                ? std::string{wordFor(*found.finding.row, kFoodStateWords)}
                                : std::string{"without what is not eaten"};
    return fmt::format(
               "weighed {}, but the values of “{}” are {}: choose a row for {}, or give "
               "the yield between the two",
               weighed, nameOfValues(found.food), row, weighed) +
           betterText(found);
}

std::string scalingText(const Found& found) {
    const auto& measures = found.food.table->measures;
    const auto& [a, b] = *found.finding.measures;
    return fmt::format("the table's measures do not scale: {}, but {}; weigh it",
                       measureText(measures[a]), measureText(measures[b]));
}

std::string_view doubtText(RefuseDoubt doubt) {
    switch (doubt) {
        case RefuseDoubt::ShellIfBoughtInShell:
            return "it is the shell, and the food is mostly bought without";
        case RefuseDoubt::PeelThoughEaten:
            return "it is the peel, although the values are for the food with it";
        case RefuseDoubt::Gristle:
            return "it is gristle that a laboratory took out and a kitchen does not";
        case RefuseDoubt::SkinOfSkinless:
            return "it counts the skin, which skinless meat comes without";
        case RefuseDoubt::WrongSum:
            return "its published parts do not add up to it";
    }
    return {};
}

std::string refuseText(const Found& found) {
    const TableFood& table = *found.food.table;
    return fmt::format(
        "the table's refuse of {} % is doubtful ({}): {}; weigh before and after "
        "trimming",
        shortNumber(*table.refusePercent), table.refuseNote, doubtText(*found.finding.doubt));
}

std::string smallText(const Found& found) {
    const Reading& reading = found.dossier.readings[*found.finding.reading];
    return fmt::format(
        "{} is under 20 steps of its scale: rounding alone is {} of it; weigh more "
        "at once, or on a finer scale",
        reading.id, percent(found.finding.relative));
}

std::string sizeText(const Found& found) {
    const OpenWay& way = found.grams.way();
    if (!way.why.sizes)
        return fmt::format("the table has no size “{}” of it: weigh one, or leave the size out",
                           found.line.size);
    return fmt::format("the size is not said, and the table has {} g to {} g each: say it",
                       shortNumber(way.why.sizes->low), shortNumber(way.why.sizes->high));
}

}  // namespace

std::string findingSentence(const Dossier& dossier, std::size_t recipe, std::size_t line,
                            const LineGrams& grams, const LineFinding& finding) {
    const Line& asked = dossier.recipes[recipe].lines[line];
    const Found found{dossier, asked, dossier.foods[std::get<FoodIndex>(asked.what).index], grams,
                      finding};
    switch (finding.kind) {
        case LineFindingKind::WaysDisagree:
            return disagreeText(found);
        case LineFindingKind::StateMismatch:
            return stateText(found);
        case LineFindingKind::PreparedNotSaid:
            return fmt::format(
                "the label of {} speaks of it prepared: if it was weighed so, write “cooked” as "
                "its preparation, else use a label as sold",
                found.food.name);
        case LineFindingKind::MeasuresDoNotScale:
            return scalingText(found);
        case LineFindingKind::RefuseDoubtful:
            return refuseText(found);
        case LineFindingKind::BetterWayOpen:
            return fmt::format("{} was chosen, and “{}” is open, which says more",
                               nameOf(grams.way().way), nameOf(*finding.better));
        case LineFindingKind::SizeNotSaid:
            return sizeText(found);
        case LineFindingKind::SmallReading:
            return smallText(found);
    }
    return {};
}

}  // namespace nettare
