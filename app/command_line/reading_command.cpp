#include "app/command_line/reading_command.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <ostream>

#include "app/command_line/instead_of.h"
#include "app/command_line/series_page.h"
#include "app/command_line/show_recipe.h"
#include "app/command_line/weigh_on.h"
#include "app/command_line/weighed_pair.h"
#include "core/publish/number_text.h"
#include "core/recipe/words.h"
#include "core/support/text.h"
#include "core/weighing/judgement.h"

namespace nettare {

namespace {

/// A reading on its way to the ledger.
struct NewReading {
    KnownScale scale;
    std::optional<LedgerEntry> tare;  ///< to be recorded with it
    LedgerEntry gross;
    Decimal net;
    Decimal otherStep;                    ///< readability of what the net is a difference to
    std::optional<LedgerReading> before;  ///< of a ratio: what went in
    std::vector<std::string> takenOver;   ///< from the reading that it corrects, in words
};

constexpr EntryArgument kReadingArguments[]{{"/what", "WHAT"},
                                            {"/why", "--why"},
                                            {"/row", "--row"},
                                            {"/series/tags", "--tag"},
                                            {"/series/of", "the name of the series"},
                                            {"/reason", "--because"}};

WeighedState stateNamed(const std::string& word) {
    const auto known = std::ranges::find(kStateWords, word, &Word<WeighedState>::word);
    return known == kStateWords.end() ? WeighedState::EdiblePortion : known->meaning;
}

/// The row exists in a table at hand.
Result<std::string> rowText(const std::string& text, DossierLoader& loader) {
    if (text.empty()) return text;
    const Error missing = ofArgument("--row", Error{ErrorCode::FoodNotFound}.with("found", text));
    const auto row = rowNamed(text);
    if (!row) return fail(missing);
    const auto tables = loader.tables();
    if (!tables) return fail(tables.error());
    const auto food = (*tables)->find(*row);
    if (!food) return fail(food.error());
    return *food ? Result<std::string>{row->text()} : fail(missing);
}

/// Another indication that the net is a difference to.
Result<LedgerReading> otherOn(const KnownScale& scale, const Kitchen& kitchen,
                              std::string_view argument, const std::string& id) {
    auto other = readingNamed(kitchen, argument, id);
    if (other && other->entry().unit != scale.unit)
        return fail(ofArgument(argument, Error{ErrorCode::ReadingUnitsDiffer}.with("found", id)));
    return other;
}

/// What the scale showed with the empty vessel, or zero.
Result<void> takeShownTare(const ReadingCommand& command, NewReading& reading) {
    Decimal shown{0, reading.scale.readability.exponent()};
    if (!command.tare.empty()) {
        const auto typed = shownOn(reading.scale, "--tare", command.tare);
        if (!typed) return fail(typed.error());
        shown = *typed;
    }
    reading.tare = entryOn(reading.scale, EntryKind::Shown);
    reading.tare->indication = reading.tare->id;
    reading.tare->state = WeighedState::Empty;
    reading.tare->shown = shown;
    reading.gross.tare = reading.tare->id;
    reading.net = reading.gross.shown.minus(shown);
    reading.otherStep = reading.scale.readability;
    return {};
}

Result<void> takeVessel(const ReadingCommand& command, const BenchEquipment& equipment,
                        NewReading& reading) {
    const auto vessel = vesselNamed(equipment, reading.scale, command.vessel);
    if (!vessel) return fail(vessel.error());
    reading.gross.vessel = vessel->name;
    reading.gross.vesselTare = vessel->tare;
    reading.gross.tare = vessel->entry;  // its own scale and rounding count
    reading.net = reading.gross.shown.minus(vessel->tare);
    reading.otherStep = vessel->readability;
    return {};
}

Result<void> takeOther(const ReadingCommand& command, const Kitchen& kitchen, NewReading& reading) {
    const bool fromJar = !command.from.empty();
    const auto other = fromJar ? otherOn(reading.scale, kitchen, "--from", command.from)
                               : otherOn(reading.scale, kitchen, "--after", command.after);
    if (!other) return fail(other.error());
    const Decimal shown = other->entry().shown;
    reading.otherStep = other->entry().readability;
    (fromJar ? reading.gross.takenFrom : reading.gross.tare) = other->entry().id;
    reading.net = fromJar ? shown.minus(reading.gross.shown) : reading.gross.shown.minus(shown);
    return {};
}

/// The tare of the reading that this one corrects, as it was weighed then.
Result<void> takeSameTare(const LedgerReading& corrected, const Kitchen& kitchen,
                          NewReading& reading) {
    const LedgerEntry& then = corrected.entry();
    LedgerEntry& gross = reading.gross;
    const bool fromJar = !then.takenFrom.empty();
    const std::string& id = fromJar ? then.takenFrom : then.tare;
    Decimal tare = then.vesselTare.value_or(Decimal{});
    reading.otherStep = reading.scale.readability;
    if (id.empty() && then.unit != reading.scale.unit)
        return fail(ofArgument("--instead-of",
                               Error{ErrorCode::ReadingUnitsDiffer}.with("found", then.id)));
    if (!id.empty()) {
        const auto other = otherOn(reading.scale, kitchen, fromJar ? "--from" : "--tare", id);
        if (!other) return fail(other.error());
        tare = other->entry().shown;
        reading.otherStep = other->entry().readability;
    }
    gross.tare = then.tare;
    gross.takenFrom = then.takenFrom;
    gross.vessel = then.vessel;
    gross.vesselTare = then.vesselTare;
    reading.net = fromJar ? tare.minus(gross.shown) : gross.shown.minus(tare);
    if (tare != Decimal{})
        reading.takenOver.push_back(
            fmt::format("{} {} {}", fromJar ? "from" : "tare", printedDecimal(tare), gross.unit));
    return {};
}

bool saysTare(const ReadingCommand& command) {
    return !command.tare.empty() || !command.vessel.empty() || !command.after.empty() ||
           !command.from.empty();
}

bool hasTare(const LedgerEntry& entry) {
    return !entry.tare.empty() || !entry.takenFrom.empty() || entry.vesselTare;
}

Result<void> takeTare(const ReadingCommand& command, const Kitchen& kitchen,
                      const BenchEquipment& equipment,
                      const std::optional<LedgerReading>& corrected, NewReading& reading) {
    if (corrected && !saysTare(command) && hasTare(corrected->entry()))
        return takeSameTare(*corrected, kitchen, reading);
    if (!command.vessel.empty()) return takeVessel(command, equipment, reading);
    if (!command.after.empty() || !command.from.empty())
        return takeOther(command, kitchen, reading);
    return takeShownTare(command, reading);
}

/// The series that is named, without what went in.
std::optional<SeriesMark> markOf(const ReadingCommand& command) {
    SeriesMark mark;
    if (!command.ratio.empty()) {
        mark.kind = SeriesKind::Ratio;
        mark.of = trimmed(command.ratio);
    } else if (!command.perMeasure.empty()) {
        mark.kind = SeriesKind::PerMeasure;
        mark.of = trimmed(command.perMeasure);
    } else if (!command.perPiece.empty()) {
        mark.of = trimmed(command.perPiece);
    } else {
        return {};
    }
    for (const std::string& tag : command.tags) mark.tags.emplace_back(trimmed(tag));
    std::ranges::sort(mark.tags);
    mark.tags.erase(std::unique(mark.tags.begin(), mark.tags.end()), mark.tags.end());
    return mark;
}

Result<void> takeSeries(const ReadingCommand& command, const Kitchen& kitchen,
                        NewReading& reading) {
    LedgerEntry& gross = reading.gross;
    gross.series = markOf(command);
    if (!gross.series) {
        if (command.tags.empty()) return {};
        return fail(ofArgument("--tag", Error{ErrorCode::ReadingOfNothing}));
    }
    SeriesMark& mark = *gross.series;
    if (mark.kind != SeriesKind::PerPiece && gross.pieces != 1)
        return fail(
            ofArgument("--pieces", Error{ErrorCode::NoSeriesOfPieces}
                                       .with("found", seriesTitle({gross.what, mark.kind, mark.of}))
                                       .with("key", "--pieces")));
    if (mark.kind != SeriesKind::Ratio) return {};
    auto before = readingNamed(kitchen, "--before", command.before);
    if (!before) return fail(before.error());
    if (auto sound = judgePair(kitchen, *before, gross); !sound) return sound;
    mark.before = before->entry().id;
    reading.before = std::move(*before);
    return {};
}

/// What was weighed, as what and what for.
Result<void> takeWords(const ReadingCommand& command, const std::optional<LedgerReading>& corrected,
                       DossierLoader& loader, LedgerEntry& gross) {
    auto row = rowText(command.row, loader);
    if (!row) return fail(row.error());
    gross.row = std::move(*row);
    if (gross.row.empty() && corrected) gross.row = corrected->entry().row;
    gross.what = trimmed(command.what);
    gross.why = trimmed(command.why);
    gross.pieces = command.pieces.value_or(1);
    gross.state = stateNamed(command.state);
    if (!corrected) return {};
    gross.refersTo = corrected->entry().id;
    gross.reason = trimmed(command.because);
    return {};
}

Result<NewReading> newReading(const ReadingCommand& command, const Kitchen& kitchen,
                              DossierLoader& loader,
                              const std::optional<LedgerReading>& corrected) {
    const auto equipment = equipmentIn(kitchen);
    if (!equipment) return fail(equipment.error());
    const auto scale = scaleNamed(*equipment, command.scale);
    if (!scale) return fail(scale.error());
    NewReading reading{*scale, {}, entryOn(*scale, EntryKind::Shown), {}, {}, {}, {}};
    LedgerEntry& gross = reading.gross;
    const auto shown = shownOn(*scale, "GROSS", command.gross);
    if (!shown) return fail(shown.error());
    gross.indication = gross.id;
    gross.shown = *shown;
    if (auto taken = takeWords(command, corrected, loader, gross); !taken)
        return fail(taken.error());
    if (auto taken = takeTare(command, kitchen, *equipment, corrected, reading); !taken)
        return fail(taken.error());
    if (auto taken = takeSeries(command, kitchen, reading); !taken) return fail(taken.error());
    return reading;
}

/// A reading that takes the place of another one, which says what this one does not.
Result<NewReading> newCorrection(const ReadingCommand& command, const Kitchen& kitchen,
                                 DossierLoader& loader) {
    const auto corrected = correctedReading(kitchen, command.insteadOf);
    if (!corrected) return fail(corrected.error());
    auto whole = completed(kitchen, command, corrected->entry());
    if (!whole) return fail(whole.error());
    auto reading = newReading(whole->command, kitchen, loader, *corrected);
    if (reading)
        reading->takenOver.insert(reading->takenOver.begin(), whole->takenOver.begin(),
                                  whole->takenOver.end());
    return reading;
}

Result<void> judgeNet(const NewReading& reading) {
    if (reading.net < Decimal{})
        return fail(
            ofArgument("GROSS", Error{ErrorCode::NetNegative}
                                    .with("found", reading.gross.what)
                                    .with("tare", reading.gross.shown.minus(reading.net).text())
                                    .with("gross", reading.gross.shown.text())));
    if (reading.gross.series && reading.net == Decimal{})
        return fail(ofArgument("GROSS",
                               Error{ErrorCode::NothingWeighed}.with("found", reading.gross.what)));
    return {};
}

Result<void> recordBoth(const NewReading& reading, Kitchen& kitchen) {
    return kitchen.together([&]() -> Result<void> {
        if (reading.tare)
            if (const auto tare = kitchen.record(*reading.tare); !tare) return fail(tare.error());
        if (const auto gross = recorded(kitchen, reading.gross, kReadingArguments); !gross)
            return fail(gross.error());
        return {};
    });
}

/// Whose place it takes, and what it has from there.
std::string correctionText(const NewReading& reading) {
    std::string text = fmt::format("  in the place of {}", shortId(reading.gross.refersTo));
    if (!reading.takenOver.empty())
        text += fmt::format("; taken over from it: {}", fmt::join(reading.takenOver, ", "));
    return text + '\n';
}

/// "Recorded 58.9 g of prawn meat, 6 pieces (3f2b8c1e-…)", and a caution below 20 steps.
std::string recordedText(const NewReading& reading) {
    const LedgerEntry& gross = reading.gross;
    // Two roundings, each a rectangle of d/sqrt(12) (JCGM 100:2008, 4.3.7).
    const double step = reading.scale.readability.value();
    const double otherStep = reading.otherStep.value();
    const double rounding = std::hypot(step, otherStep) / std::sqrt(12.0);
    // As fine as the coarser zeros that were left out: 350 on a scale of 0.1 g is 350.0.
    const int decimals = std::max({reading.net.decimals(), reading.scale.readability.decimals(),
                                   reading.otherStep.decimals()});
    std::string text = fmt::format(
        "Recorded {} {} {} of {}", printedDecimal(reading.net.minus(Decimal{0, -decimals})),
        gross.unit, halfWidthText(decimals, 1.96 * rounding), gross.what);
    if (gross.pieces != 1) text += fmt::format(", {} pieces", gross.pieces);
    text += fmt::format("\n  id {}\n", gross.id);
    if (!gross.refersTo.empty()) text += correctionText(reading);
    if (coarseShare(reading.net.value(), std::max(step, otherStep)))
        text += fmt::format(
            "  ! under 20 steps of this scale: rounding alone is {} % of it; weigh several "
            "together "
            "or take a finer scale\n",
            numberAt(1, 100 * rounding / reading.net.value()));
    if (reading.before) {
        LedgerReading after;
        after.chained.entry = gross;
        after.net = reading.net;
        text += pairCautions(*reading.before, after);
    }
    return text;
}

/// What is said of a reading that is there.
struct Speech {
    EntryKind kind;
    std::string_view argument;
    const std::string& id;
    std::string_view done;
};

Speech speechOf(const ReadingCommand& command) {
    if (!command.takeBack.empty())
        return {EntryKind::Superseded, "--take-back", command.takeBack, "Taken back"};
    if (!command.leaveOut.empty())
        return {EntryKind::LeftOut, "--leave-out", command.leaveOut, "Left out of its series"};
    if (!command.takeIn.empty())
        return {EntryKind::TakenIn, "--take-in", command.takeIn, "Counts again"};
    return {EntryKind::TakenIn, "--as-weighed", command.asWeighed, "Counts"};
}

/// Whether that may be said of it; the kitchen sees to the rest.
Result<void> judgeSpeech(const ReadingCommand& command, const Speech& speech,
                         const LedgerReading& reading) {
    const auto refused = [&](ErrorCode code) {
        return fail(ofArgument(speech.argument, Error{code}.with("found", reading.entry().id)));
    };
    if (!command.takeIn.empty() && reading.counts()) return refused(ErrorCode::ReadingNotLeftOut);
    if (command.asWeighed.empty()) return {};
    if (!reading.entry().series) return refused(ErrorCode::ReadingOfNoSeries);
    if (reading.leftOut && reading.supersededBy.empty()) return refused(ErrorCode::ReadingLeftOut);
    return {};
}

}  // namespace

Result<void> recordReading(const ReadingCommand& command, Kitchen& kitchen, DossierLoader& loader,
                           std::ostream& out) {
    const auto reading = command.insteadOf.empty() ? newReading(command, kitchen, loader, {})
                                                   : newCorrection(command, kitchen, loader);
    if (!reading) return fail(reading.error());
    if (auto sound = judgeNet(*reading); !sound) return sound;
    if (auto recorded = recordBoth(*reading, kitchen); !recorded) return recorded;
    out << recordedText(*reading);
    if (const auto key = seriesKeyOf(reading->gross)) {
        BenchSeries asked;
        asked.key = *key;
        const auto series = seriesIn(kitchen, loader, asked);
        if (!series) return fail(series.error());
        out << seriesTitle(*key) << '\n' << seriesLines(*series);
    }
    return {};
}

Result<void> speakOfReading(const ReadingCommand& command, Kitchen& kitchen, std::ostream& out) {
    const Speech speech = speechOf(command);
    const auto reading = readingNamed(kitchen, speech.argument, speech.id);
    if (!reading) return fail(reading.error());
    if (auto sound = judgeSpeech(command, speech, *reading); !sound) return sound;
    LedgerEntry entry = entryOfNow(speech.kind);
    entry.refersTo = reading->entry().id;
    const std::string because{trimmed(command.because)};
    entry.reason = because.empty() ? "it is as weighed" : because;
    if (const auto kept = recorded(kitchen, entry, kReadingArguments); !kept)
        return fail(kept.error());
    out << fmt::format("{} {}: {}\n", speech.done, shortId(entry.refersTo), entry.reason);
    return {};
}

}  // namespace nettare
