#include "app/scale/weighing.h"

#include <QUuid>

#include "core/ledger/reading_subject.h"
#include "core/quantity/unit.h"
#include "core/recipe/read_recipe.h"

namespace nettare {

namespace {

Decimal tareShown(const Weighing& weighing) {
    if (const auto* vessel = std::get_if<VesselEntry>(&weighing.tare)) return vessel->tare;
    if (const auto* shown = std::get_if<ShownTare>(&weighing.tare)) return shown->shown;
    // Zero with as many decimals as the scale shows.
    return {0, weighing.scale.readability.exponent()};
}

LedgerEntry ledgerEntry(const RecordedIndication& indication, const Weighing& weighing,
                        const DraftSession& draft) {
    LedgerEntry entry;
    entry.id = indication.id;
    entry.at = indication.at;
    entry.recipe = draft.recipe().toStdString();
    entry.indication = indication.id;
    entry.shown = indication.shown;
    entry.unit = weighing.scale.unit;
    entry.readability = weighing.scale.readability;
    entry.scale = weighing.scale.name;
    if (const auto* vessel = std::get_if<VesselEntry>(&weighing.tare)) {
        entry.vessel = vessel->name;
        entry.vesselTare = vessel->tare;
    }
    entry.state = indication.state;
    return entry;
}

/// The indication that stands for the tare; nothing for a known vessel.
std::optional<RecordedIndication> tareIndication(const Weighing& weighing, const std::string& at) {
    if (std::holds_alternative<VesselEntry>(weighing.tare)) return {};
    RecordedIndication tare{freshUuid(), weighing.scale.id, tareShown(weighing),
                            WeighedState::Empty, at};
    if (const auto* shown = std::get_if<ShownTare>(&weighing.tare)) {
        tare.id = shown->id;
        tare.at = shown->at;
    }
    return tare;
}

}  // namespace

Decimal netOf(const Weighing& weighing) {
    return weighing.shown.minus(tareShown(weighing));
}

double netGramsOf(const Weighing& weighing) {
    const Unit* unit = findUnit(weighing.scale.unit, MeasureSystem::Metric);
    return netOf(weighing).value() * (unit == nullptr ? 1 : unit->factor.value());
}

bool isShowable(Decimal shown, const ScaleEntry& scale) {
    return roundedToStep(shown, scale.readability) == shown;
}

std::string freshUuid() {
    return QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
}

Recording recordingOf(const Weighing& weighing, const DraftSession& draft, const Purpose& purpose,
                      const std::string& at) {
    Recording recording;
    RecordedReading& reading = recording.reading;
    const auto tare = tareIndication(weighing, at);
    if (tare) {
        const auto* shown = std::get_if<ShownTare>(&weighing.tare);
        if (shown == nullptr || !shown->inLedger)
            recording.entries.push_back(ledgerEntry(*tare, weighing, draft));
        reading.tare = *tare;
    } else {
        reading.tare = std::get<VesselEntry>(weighing.tare).id;
    }
    reading.gross = {freshUuid(), weighing.scale.id, weighing.shown, stateFor(draft, purpose), at};
    reading.pieces = weighing.pieces;
    reading.instead = weighing.instead;
    reading.purpose = readingPurpose(purpose);
    if (weighing.scaleIsNew) reading.scales.push_back(weighing.scale);
    recording.entries.push_back(ledgerEntry(reading.gross, weighing, draft));
    recording.entries.back().pieces = weighing.pieces;
    recording.entries.back().tare = tare ? tare->id : weighing.vesselEntry;
    return recording;
}

void nameSubject(Recording& recording, const Json& document, const Edit& edit) {
    Json after = document;
    if (apply(edit, after)) return;
    const auto recipe = readRecipe(after);
    if (!recipe) return;
    ReadingSubject subject = subjectOf(*recipe, recording.reading.gross.id);
    LedgerEntry& entry = recording.entries.back();
    entry.what = std::move(subject.what);
    entry.why = std::move(subject.why);
    entry.row = std::move(subject.row);
    entry.series = std::move(subject.series);
}

}  // namespace nettare
