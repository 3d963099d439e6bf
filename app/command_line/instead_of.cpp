#include "app/command_line/instead_of.h"

#include <fmt/core.h>

#include <algorithm>

#include "app/command_line/show_recipe.h"
#include "app/command_line/weigh_on.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

bool namesSeries(const ReadingCommand& command) {
    return !command.perPiece.empty() || !command.perMeasure.empty() || !command.ratio.empty();
}

/// The reading of that id, or what took its place.
Result<LedgerReading> standingFor(const Kitchen& kitchen, std::string_view argument,
                                  std::string id) {
    while (true) {
        auto reading = indicationNamed(kitchen, argument, id);
        if (!reading || reading->supersededBy.empty()) return reading;
        if (reading->successor.empty())
            return fail(ofArgument(argument, Error{ErrorCode::ReadingOverruled}.with("found", id)));
        id = reading->successor;
    }
}

Result<void> takeOverSeries(const Kitchen& kitchen, const SeriesMark& mark, Correction& taken) {
    ReadingCommand& command = taken.command;
    if (!namesSeries(command)) {
        if (mark.kind == SeriesKind::Ratio) {
            const auto before = standingFor(kitchen, "--before", mark.before);
            if (!before) return fail(before.error());
            command.ratio = mark.of;
            command.before = before->entry().id;
        } else {
            (mark.kind == SeriesKind::PerMeasure ? command.perMeasure : command.perPiece) = mark.of;
        }
        taken.takenOver.push_back(mark.kind == SeriesKind::Ratio ? mark.of : "per " + mark.of);
    }
    if (command.tags.empty() && !mark.tags.empty()) {
        command.tags = mark.tags;
        for (const std::string& tag : mark.tags)
            taken.takenOver.push_back(fmt::format("[{}]", tag));
    }
    return {};
}

/// A reading of a document may be of a scale that the kitchen does not know.
Result<void> takeOverScale(const Kitchen& kitchen, const LedgerEntry& corrected,
                           ReadingCommand& command) {
    if (!command.scale.empty()) return {};
    const auto equipment = equipmentIn(kitchen);
    if (!equipment) return fail(equipment.error());
    const auto& scales = equipment->scales;
    if (std::ranges::find(scales, corrected.scale, &KnownScale::name) != scales.end())
        command.scale = corrected.scale;
    return {};
}

void takeOverPieces(const LedgerEntry& corrected, Correction& taken) {
    ReadingCommand& command = taken.command;
    const bool single = !command.perMeasure.empty() || !command.ratio.empty();
    if (command.pieces || single || corrected.pieces == 1) return;
    command.pieces = corrected.pieces;
    taken.takenOver.push_back(fmt::format("{} pieces", corrected.pieces));
}

void takeOverWords(const LedgerEntry& corrected, ReadingCommand& command) {
    if (command.why.empty()) command.why = corrected.why;
    if (!command.state.empty()) return;
    const auto word = std::ranges::find(kStateWords, corrected.state, &Word<WeighedState>::meaning);
    if (word != kStateWords.end()) command.state = word->word;
}

}  // namespace

Result<LedgerReading> correctedReading(const Kitchen& kitchen, const std::string& id) {
    auto reading = indicationNamed(kitchen, "--instead-of", id);
    if (reading && !reading->successor.empty())
        return fail(ofArgument("--instead-of", Error{ErrorCode::ReadingOverruled}
                                                   .with("found", id)
                                                   .with("other", shortId(reading->successor))));
    return reading;
}

Result<Correction> completed(const Kitchen& kitchen, ReadingCommand command,
                             const LedgerEntry& corrected) {
    Correction taken{std::move(command), {}};
    if (corrected.series)
        if (const auto series = takeOverSeries(kitchen, *corrected.series, taken); !series)
            return fail(series.error());
    if (const auto scale = takeOverScale(kitchen, corrected, taken.command); !scale)
        return fail(scale.error());
    takeOverPieces(corrected, taken);
    takeOverWords(corrected, taken.command);
    return taken;
}

}  // namespace nettare
