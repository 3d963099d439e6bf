#include "app/command_line/weigh_on.h"

#include <fmt/core.h>

#include <algorithm>

#include "app/command_line/show_recipe.h"
#include "app/scale/shown_number.h"
#include "app/session/now.h"
#include "core/support/text.h"
#include "db/kitchen/uuid.h"

namespace nettare {

namespace {

constexpr std::size_t kIdShown = 8;

template <class Thing>
std::string namesOf(const std::vector<Thing>& things) {
    std::string names;
    for (const Thing& thing : things)
        names += fmt::format("{}“{}”", names.empty() ? "" : ", ", thing.name);
    return names;
}

/// As the scale shows it: with its unit.
std::string onScale(const KnownScale& scale, Decimal amount) {
    return fmt::format("{} {}", amount.text(), scale.unit);
}

}  // namespace

Result<BenchEquipment> equipmentIn(const Kitchen& kitchen) {
    const auto entries = kitchen.equipmentEntries();
    if (!entries) return fail(entries.error());
    return equipmentOf(*entries);
}

Result<KnownScale> scaleNamed(const BenchEquipment& equipment, const std::string& name) {
    const auto& scales = equipment.scales;
    if (name.empty() && scales.size() == 1) return scales.front();
    if (name.empty() && scales.size() > 1)
        return fail(
            ofArgument("--scale", Error{ErrorCode::ScaleAmbiguous}.with("known", namesOf(scales))));
    const auto found = std::ranges::find(scales, name, &KnownScale::name);
    if (found == scales.end())
        return fail(ofArgument(
            "--scale",
            Error{ErrorCode::ScaleNotKnown}.with("found", name).with("known", namesOf(scales))));
    return *found;
}

Result<KnownVessel> vesselNamed(const BenchEquipment& equipment, const KnownScale& scale,
                                const std::string& name) {
    const auto found = std::ranges::find(equipment.vessels, name, &KnownVessel::name);
    if (found == equipment.vessels.end())
        return fail(ofArgument("--vessel", Error{ErrorCode::VesselNotKnown}
                                               .with("found", name)
                                               .with("known", namesOf(equipment.vessels))));
    if (found->unit != scale.unit)
        return fail(ofArgument("--vessel", Error{ErrorCode::VesselOtherUnit}
                                               .with("found", name)
                                               .with("unit", found->unit)
                                               .with("wanted", scale.unit)));
    return *found;
}

Result<Decimal> shownOn(const KnownScale& scale, std::string_view argument,
                        const std::string& typed) {
    const auto shown = readShown(typed, groupMarkHere());
    if (!shown) return fail(ofArgument(argument, shown.error()));
    if (roundedToStep(*shown, scale.readability) != *shown)
        return fail(ofArgument(argument, Error{ErrorCode::NotOfTheScale}
                                             .with("step", onScale(scale, scale.readability))
                                             .with("found", onScale(scale, *shown))));
    if (scale.capacity && *scale.capacity < *shown)
        return fail(ofArgument(argument, Error{ErrorCode::AboveCapacity}
                                             .with("most", onScale(scale, *scale.capacity))
                                             .with("found", onScale(scale, *shown))));
    return *shown;
}

Result<Decimal> positiveOf(std::string_view argument, const std::string& typed) {
    const auto number = readShown(typed, groupMarkHere());
    if (!number) return fail(ofArgument(argument, number.error()));
    if (!(Decimal{} < *number))
        return fail(ofArgument(argument, Error{ErrorCode::NotPositive}.with("found", typed)));
    return *number;
}

Result<LedgerReading> indicationNamed(const Kitchen& kitchen, std::string_view argument,
                                      const std::string& id) {
    const auto entries = kitchen.entriesAbout(id);
    if (!entries) return fail(ofArgument(argument, entries.error()));
    auto readings = readingsOf(*entries, {});
    const std::string wanted = lowerAscii(id);
    const auto found = std::ranges::find_if(readings, [&wanted](const LedgerReading& reading) {
        return reading.entry().id.starts_with(wanted);
    });
    if (found == readings.end())
        return fail(ofArgument(argument, Error{ErrorCode::ReadingNotFound}.with("found", id)));
    return std::move(*found);
}

Result<LedgerReading> readingNamed(const Kitchen& kitchen, std::string_view argument,
                                   const std::string& id) {
    auto found = indicationNamed(kitchen, argument, id);
    if (found && !found->supersededBy.empty())
        return fail(ofArgument(argument, Error{ErrorCode::ReadingOverruled}
                                             .with("found", id)
                                             .with("other", shortId(found->successor))));
    return found;
}

LedgerEntry entryOfNow(EntryKind kind) {
    LedgerEntry entry;
    entry.kind = kind;
    entry.id = newUuid();
    entry.at = now();
    return entry;
}

LedgerEntry entryOn(const KnownScale& scale, EntryKind kind) {
    LedgerEntry entry = entryOfNow(kind);
    entry.scale = scale.name;
    entry.unit = scale.unit;
    entry.readability = scale.readability;
    return entry;
}

Result<ChainedEntry> recorded(Kitchen& kitchen, const LedgerEntry& entry,
                              std::span<const EntryArgument> arguments) {
    auto done = kitchen.record(entry);
    if (done) return done;
    Error error = done.error();
    const auto from = std::ranges::find_if(arguments, [&error](const EntryArgument& each) {
        return error.pointer.starts_with(each.pointer);
    });
    if (from == arguments.end()) return done;
    error.pointer.clear();
    return fail(ofArgument(from->argument, std::move(error)));
}

std::string shortId(const std::string& id) {
    return id.substr(0, kIdShown);
}

}  // namespace nettare
