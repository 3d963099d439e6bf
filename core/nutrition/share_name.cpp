#include "core/nutrition/share_name.h"

#include <fmt/core.h>

#include <algorithm>

namespace nettare {

namespace {

constexpr std::uint32_t kLinesARecipe = 65536;

const Line& lineAt(const Dossier& dossier, std::uint32_t number) {
    return dossier.recipes[number / kLinesARecipe].lines[number % kLinesARecipe];
}

/// The food of the first line that uses a series.
const std::string* foodOfSeries(const Dossier& dossier, std::size_t series) {
    for (const Recipe& recipe : dossier.recipes)
        for (const Line& line : recipe.lines)
            if ((line.series && line.series->series == series) || line.trim == series ||
                (line.yield && line.yield->series == series))
                return &line.name;
    return nullptr;
}

std::string seriesName(const Dossier& dossier, std::size_t index) {
    const SeriesData& series = dossier.series[index];
    const std::string* food = foodOfSeries(dossier, index);
    return fmt::format("{}, your {}", food != nullptr ? *food : series.name,
                       series.kind == SeriesKind::Ratio ? "ratio" : "series");
}

/// The serving, the amount, or both.
std::string labelName(std::string_view component, const std::vector<Contribution>& parts) {
    const auto isServing = [](const Contribution& part) {
        return part.source.key.kind == SourceKind::LabelServing ||
               part.source.key.kind == SourceKind::LabelDensity;
    };
    if (std::ranges::all_of(parts, isServing)) return "label serving";
    return fmt::format("label {}{}", component,
                       std::ranges::any_of(parts, isServing) ? " and serving" : "");
}

std::string_view openOf(SourceKind aspect) {
    switch (aspect) {
        case SourceKind::PackContent:
            return "content of its pack";
        case SourceKind::SizeNotSaid:
            return "size not said";
        case SourceKind::Filling:
            return "how the spoon is filled";
        case SourceKind::VagueUnit:
            return "a manner of speaking";
        case SourceKind::DensityStated:
            return "density stated";
        case SourceKind::AmountRange:
            return "range of the amount";
        case SourceKind::Written:
            return "weight as written";
        case SourceKind::Assumed:
            return "grams assumed";
        case SourceKind::YieldStated:
            return "yield stated";
        case SourceKind::OptionalLine:
            return "optional";
        default:
            return "amount";
    }
}

std::string_view foodPart(SubjectOf of) {
    switch (of) {
        case SubjectOf::FoodTable:
            return "table ";
        case SubjectOf::FoodStated:
            return "stated ";
        default:
            return "";
    }
}

}  // namespace

std::string residueCalled(const Dossier& dossier, std::uint32_t number) {
    const Recipe& recipe = dossier.recipes[number / kLinesARecipe];
    const Residue& residue = recipe.residues[number % kLinesARecipe];
    if (!residue.called.empty()) return residue.called + " left over";
    switch (residue.kind) {
        case ResidueKind::Line:
            return recipe.lines[residue.lines.front()].name + " left in the bowl";
        case ResidueKind::Mixture:
            return "what stayed in the bowl";
        case ResidueKind::Drip:
            return dossier.foods[*residue.food].name + " that ran off";
        case ResidueKind::Unknown:
            return "what was left over";
        case ResidueKind::Water:
            return "cooking water poured off";
        case ResidueKind::NotEaten:
            return "what is not eaten";
    }
    return {};
}

std::string shareName(const ShareSubject& subject, Component component,
                      const std::vector<Contribution>& parts, const Dossier& dossier) {
    const std::string_view figure = factsOf(component).name;
    const std::uint32_t index = subject.index;
    const auto ofFood = [&](std::string_view what) {
        return fmt::format("{}, {}", dossier.foods[index].name, what);
    };
    switch (subject.of) {
        case SubjectOf::LineReadings:
            return "weighing of " + lineAt(dossier, index).name;
        case SubjectOf::CommonReadings:
            return "tare of several weighings";
        case SubjectOf::Vessel:
            return "tare of " + dossier.vessels[index].name;
        case SubjectOf::Scale:
            return "calibration of " + dossier.scales[index].name;
        case SubjectOf::Series:
            return seriesName(dossier, index);
        case SubjectOf::Residue:
            return residueCalled(dossier, index);
        case SubjectOf::Dish:
            return "weighing of the dish";
        case SubjectOf::FoodLabel:
            return ofFood(labelName(figure, parts));
        case SubjectOf::FoodTable:
        case SubjectOf::FoodStated:
            return ofFood(fmt::format("{}{}", foodPart(subject.of), figure));
        case SubjectOf::FoodMeasure:
            return ofFood("table measure");
        case SubjectOf::FoodRefuse:
            return ofFood("refuse by its table");
        case SubjectOf::Line:
            return fmt::format("{}, {}", lineAt(dossier, index).name, openOf(subject.aspect));
        case SubjectOf::MakeUp:
            return residueCalled(dossier, index) + ", make-up not known";
        case SubjectOf::Pinch:
            return "how much a pinch is";
        case SubjectOf::PiecesMade:
            return "how many pieces it makes";
        case SubjectOf::ShareOfPiece:
            return "share of one piece";
    }
    return {};
}

std::string shareSite(const ShareSubject& subject, const Dossier& dossier) {
    const auto inRecipe = [&](std::uint32_t recipe, const std::string& what) {
        const std::string& title = dossier.recipes[recipe].title;
        if (what.empty()) return title;
        return recipe == 0 ? what : fmt::format("{}, {}", title, what);
    };
    const std::uint32_t recipe = subject.index / kLinesARecipe;
    const std::uint32_t place = subject.index % kLinesARecipe + 1;
    switch (subject.of) {
        case SubjectOf::LineReadings:
        case SubjectOf::Line:
            return inRecipe(recipe, fmt::format("line {}", place));
        case SubjectOf::Residue:
        case SubjectOf::MakeUp:
            return inRecipe(recipe, fmt::format("weighing {}", place));
        case SubjectOf::Dish:
        case SubjectOf::PiecesMade:
            return inRecipe(subject.index, {});
        case SubjectOf::Series:
            return dossier.series[subject.index].name;
        default:
            return {};
    }
}

}  // namespace nettare
