#include "app/bench/weigh_entries.h"

#include <algorithm>
#include <iterator>

#include "app/scale/left_over_edit.h"
#include "app/scale/scale_choices.h"
#include "app/scale/weighing.h"
#include "core/ledger/ledger_reading.h"

namespace nettare {

namespace {

bool isZeroOrShown(const BenchTare& tare) {
    return tare.kind != TareKind::Vessel && tare.kind != TareKind::Jar;
}

LedgerEntry shownEntry(const WeighState& state, Decimal shown, const std::string& at) {
    LedgerEntry entry;
    entry.id = freshUuid();
    entry.indication = entry.id;
    entry.at = at;
    entry.shown = shown;
    entry.unit = state.scale.unit;
    entry.readability = state.scale.readability;
    entry.scale = state.scale.name;
    return entry;
}

/// What stands for the tare, unless the ledger has it or a vessel's is known.
std::optional<LedgerEntry> tareEntry(const WeighState& state, const std::string& at) {
    if (!isZeroOrShown(state.tare) || state.tare.inLedger) return {};
    const bool zeroed = state.tare.kind == TareKind::Zeroed;
    LedgerEntry entry = shownEntry(
        state, zeroed ? Decimal{0, state.scale.readability.exponent()} : state.tare.shown,
        zeroed ? at : state.tare.at);
    if (!zeroed) entry.indication = entry.id = state.tare.entry;
    entry.state = WeighedState::Empty;
    return entry;
}

/// What a food's entry says beside its numbers.
void nameFree(LedgerEntry& entry, const WeighState& state, const FreeSubject& subject) {
    entry.what = subject.what;
    entry.row = subject.row;
    entry.state = subject.state;
    entry.pieces = countsPieces(state.subject) ? state.pieces : 1;
    if (!subject.series) return;
    const SeriesMark& mark = *subject.series;
    if (state.isBefore()) {
        entry.state = stateBefore(mark);
        entry.why = beforeWord(mark).toStdString();
        return;
    }
    entry.series = mark;
    entry.series->before = state.before;
    entry.why =
        (isPair(state.subject) ? afterWord(mark) : seriesWords(mark.kind, mark.of)).toStdString();
}

void takeOff(LedgerEntry& entry, const BenchTare& tare, const std::optional<LedgerEntry>& shown) {
    if (tare.kind == TareKind::Vessel) {
        entry.vessel = tare.vessel;
        entry.vesselTare = tare.shown;
        entry.tare = tare.entry;  // its own scale and rounding count
    } else if (tare.kind == TareKind::Jar) {
        entry.takenFrom = tare.entry;
    } else {
        entry.tare = shown ? shown->id : tare.entry;
    }
}

BenchRecording jarBefore(const WeighState& state, Decimal shown, const DraftSession* draft,
                         const std::string& at) {
    LedgerEntry entry = shownEntry(state, shown, at);
    entry.state = WeighedState::Empty;
    entry.what = subjectWords(state.subject, draft).what.toStdString();
    entry.why = tareSum(state).toStdString();
    return {{std::move(entry)}, {}};
}

BenchRecording freeRecording(const WeighState& state, Decimal shown, const std::string& at) {
    BenchRecording recording;
    const auto tare = tareEntry(state, at);
    if (tare) recording.entries.push_back(*tare);
    LedgerEntry entry = shownEntry(state, shown, at);
    nameFree(entry, state, std::get<FreeSubject>(state.subject));
    takeOff(entry, state.tare, tare);
    recording.entries.push_back(std::move(entry));
    return recording;
}

/// The scale as the document has it, or gets it now.
ScaleEntry documentScale(const KnownScale& scale, const DraftSession& draft, bool& isNew) {
    for (const ScaleChoice& choice : scaleChoices(draft))
        if (!choice.isNew && choice.scale.name == scale.name && choice.scale.unit == scale.unit &&
            choice.scale.readability == scale.readability)
            return choice.scale;
    isNew = true;
    ScaleEntry entry;
    entry.id = "scale-" + freshUuid();
    entry.name = scale.name;
    entry.unit = scale.unit;
    entry.readability = scale.readability;
    return entry;
}

/// A weighing of the open recipe, with what its document lacks.
struct RecipeWeighing {
    Weighing weighing;
    std::vector<ScaleEntry> scales;
    std::vector<VesselEntry> vessels;
};

bool isScale(const ScaleEntry& scale, const BenchTare& vessel, const std::string& unit) {
    return scale.name == vessel.scale && scale.unit == unit &&
           scale.readability == vessel.readability;
}

/// The scale that the vessel was weighed empty on, most often the one that it stands on.
ScaleEntry vesselScale(const WeighState& state, const DraftSession& draft, RecipeWeighing& recipe) {
    const ScaleEntry& used = recipe.weighing.scale;
    const BenchTare& vessel = state.tare;
    if (vessel.scale.empty() || isScale(used, vessel, state.scale.unit)) return used;
    const KnownScale on{vessel.scale, state.scale.unit, vessel.readability, {}, {}};
    bool isNew = false;
    ScaleEntry scale = documentScale(on, draft, isNew);
    if (isNew) recipe.scales.push_back(scale);
    return scale;
}

/// The vessel as the document has it, or gets it now.
VesselEntry documentVessel(const WeighState& state, const DraftSession& draft,
                           RecipeWeighing& recipe) {
    const ScaleEntry scale = vesselScale(state, draft, recipe);
    for (const VesselEntry& vessel : vesselChoices(draft, state.scale.unit))
        if (vessel.name == state.tare.vessel && vessel.tare == state.tare.shown &&
            vessel.scale == scale.id)
            return vessel;
    VesselEntry vessel{"vessel-" + freshUuid(), state.tare.vessel, scale.id, state.tare.shown};
    recipe.vessels.push_back(vessel);
    return vessel;
}

/// A jar's net is what it showed before less what it shows now: to the document the one is the
/// gross, the other the tare.
void turnRound(Weighing& weighing, const BenchTare& jar, Decimal shown, const std::string& at) {
    weighing.shown = jar.shown;
    weighing.tare = ShownTare{freshUuid(), at, shown, false};
}

/// The ledger has the jar before already; what it shows now says what was taken.
void keepJarAfter(Recording& recording, const BenchTare& jar) {
    LedgerEntry after = std::move(recording.entries.front());
    const LedgerEntry& gross = recording.entries.back();
    after.state = gross.state;
    after.pieces = gross.pieces;
    after.what = gross.what;
    after.why = gross.why;
    after.row = gross.row;
    after.series = gross.series;
    after.takenFrom = jar.entry;
    recording.entries = {std::move(after)};
}

RecipeWeighing weighingOf(const WeighState& state, Decimal shown, const DraftSession& draft,
                          const std::string& at) {
    RecipeWeighing recipe;
    Weighing& weighing = recipe.weighing;
    weighing.scale = documentScale(state.scale, draft, weighing.scaleIsNew);
    weighing.shown = shown;
    weighing.pieces = countsPieces(state.subject) ? state.pieces : 1;
    weighing.instead = !state.add;
    if (state.tare.kind == TareKind::Jar) {
        turnRound(weighing, state.tare, shown, at);
    } else if (state.tare.kind == TareKind::Vessel) {
        weighing.tare = documentVessel(state, draft, recipe);
        weighing.vesselEntry = state.tare.entry;
    } else if (state.tare.kind != TareKind::Zeroed) {
        weighing.tare =
            ShownTare{state.tare.entry, state.tare.at, state.tare.shown, state.tare.inLedger};
    }
    return recipe;
}

Result<BenchRecording> recipeRecording(const WeighState& state, Decimal shown,
                                       const DraftSession& draft, const std::string& at) {
    const auto& purpose = std::get<Purpose>(state.subject);
    const RecipeWeighing recipe = weighingOf(state, shown, draft, at);
    Recording recording = recordingOf(recipe.weighing, draft, purpose, at);
    std::ranges::copy(recipe.scales, std::back_inserter(recording.reading.scales));
    recording.reading.vessels = recipe.vessels;
    if (state.tare.kind == TareKind::Jar) {
        recording.reading.gross.id = state.tare.entry;
        recording.reading.gross.at = state.tare.at;
        // What the jar shows after is what it shows before the next taking: no empty vessel.
        std::get<RecordedIndication>(recording.reading.tare).state = recording.reading.gross.state;
    }
    auto edit = purpose.kind == PurposeKind::LeftOver
                    ? leftOverEdit(draft.document(), recording.reading,
                                   purpose.leftOver.value_or(LeftOver{}))
                    : recordReading(draft.document(), recording.reading);
    if (!edit) return fail(edit.error());
    nameSubject(recording, draft.document(), *edit);
    if (state.tare.kind == TareKind::Jar) keepJarAfter(recording, state.tare);
    return BenchRecording{std::move(recording.entries), std::move(*edit)};
}

}  // namespace

Result<BenchRecording> benchRecording(const WeighState& state, Decimal shown,
                                      const DraftSession* draft, const std::string& at) {
    if (state.isJarBefore()) return jarBefore(state, shown, draft, at);
    if (std::holds_alternative<FreeSubject>(state.subject)) return freeRecording(state, shown, at);
    if (draft == nullptr || !std::holds_alternative<Purpose>(state.subject))
        return fail(ErrorCode::ReadingOfNothing);
    return recipeRecording(state, shown, *draft, at);
}

WeighState afterRecording(WeighState state, const LedgerEntry& last) {
    const bool wasJarBefore = state.isJarBefore();
    const bool wasBefore = state.isBefore();
    if (state.tare.kind == TareKind::Jar || state.tare.kind == TareKind::SameBowl) {
        state.tare.shown = last.shown;
        state.tare.entry = last.id;
        state.tare.at = last.at;
        state.tare.inLedger = true;
    } else if (state.tare.kind == TareKind::Shown) {
        state.tare.inLedger = true;
    }
    if (isPair(state.subject) && !wasJarBefore) state.before = wasBefore ? last.id : std::string{};
    if (last.state != WeighedState::Empty) state.wanted.reset();
    return state;
}

}  // namespace nettare
