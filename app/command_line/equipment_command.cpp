#include "app/command_line/equipment_command.h"

#include <fmt/core.h>

#include <algorithm>
#include <ostream>

#include "app/command_line/show_recipe.h"
#include "app/command_line/weigh_on.h"
#include "core/publish/number_text.h"
#include "core/support/text.h"

namespace nettare {

namespace {

std::string amountText(Decimal amount, const std::string& unit) {
    return fmt::format("{} {}", printedDecimal(amount), unit);
}

std::string checkText(const KnownScale& scale) {
    if (!scale.lastCheck) return "not checked yet";
    const ScaleCheck& check = *scale.lastCheck;
    return fmt::format("{} {}: showed {} for {}", check.good ? "checked" : "check FAILED", check.at,
                       amountText(check.shown, check.unit), amountText(check.mass, check.unit));
}

std::string capacityText(const KnownScale& scale) {
    return scale.capacity ? fmt::format(", up to {}", amountText(*scale.capacity, scale.unit)) : "";
}

std::string scaleLine(const KnownScale& scale) {
    return fmt::format("scale   “{}”, steps of {}{}; {}\n", scale.name,
                       amountText(scale.readability, scale.unit), capacityText(scale),
                       checkText(scale));
}

std::string vesselLine(const KnownVessel& vessel) {
    return fmt::format("vessel  “{}”, {}, weighed {} on “{}”\n", vessel.name,
                       amountText(vessel.tare, vessel.unit), vessel.at, vessel.scale);
}

/// A scale that was known gets other steps or another capacity for what comes; that is said.
std::string beforeText(const BenchEquipment& before, const KnownScale& scale) {
    const auto known = std::ranges::find(before.scales, scale.name, &KnownScale::name);
    if (known == before.scales.end()) return {};
    if (known->unit == scale.unit && known->readability == scale.readability &&
        known->capacity == scale.capacity)
        return {};
    return fmt::format("  ! known before with steps of {}{}; readings keep what it was then\n",
                       amountText(known->readability, known->unit), capacityText(*known));
}

constexpr EntryArgument kScaleArguments[]{{"/scale", "NAME"},
                                          {"/readability", "--step"},
                                          {"/capacity", "--capacity"},
                                          {"/mass", "--mass"},
                                          {"/shown", "--showed"}};
constexpr EntryArgument kVesselArguments[]{{"/vessel", "NAME"}, {"/shown", "SHOWN"}};

Result<void> addScale(const ScaleCommand& command, Kitchen& kitchen, std::ostream& out) {
    KnownScale scale;
    scale.name = trimmed(command.name);
    scale.unit = command.unit;
    const auto step = positiveOf("--step", command.step);
    if (!step) return fail(step.error());
    scale.readability = *step;
    if (!command.capacity.empty()) {
        const auto capacity = positiveOf("--capacity", command.capacity);
        if (!capacity) return fail(capacity.error());
        scale.capacity = *capacity;
    }
    const auto before = equipmentIn(kitchen);
    if (!before) return fail(before.error());
    LedgerEntry entry = entryOn(scale, EntryKind::Scale);
    entry.capacity = scale.capacity;
    if (const auto done = recorded(kitchen, entry, kScaleArguments); !done)
        return fail(done.error());
    const auto now = equipmentIn(kitchen);
    if (!now) return fail(now.error());
    const auto kept = scaleNamed(*now, scale.name);
    if (!kept) return fail(kept.error());
    out << scaleLine(*kept) << beforeText(*before, scale);
    return {};
}

Result<void> checkScale(const ScaleCommand& command, Kitchen& kitchen, std::ostream& out) {
    const auto equipment = equipmentIn(kitchen);
    if (!equipment) return fail(equipment.error());
    const auto scale = scaleNamed(*equipment, command.name);
    if (!scale) return fail(ofArgument("NAME", scale.error()));
    const auto mass = positiveOf("--mass", command.mass);
    if (!mass) return fail(mass.error());
    if (scale->capacity && *scale->capacity < *mass)
        return fail(
            ofArgument("--mass", Error{ErrorCode::AboveCapacity}
                                     .with("most", amountText(*scale->capacity, scale->unit))
                                     .with("found", amountText(*mass, scale->unit))));
    const auto shown = shownOn(*scale, "--showed", command.showed);
    if (!shown) return fail(shown.error());
    LedgerEntry entry = entryOn(*scale, EntryKind::Checked);
    entry.mass = *mass;
    entry.shown = *shown;
    if (const auto kept = recorded(kitchen, entry, kScaleArguments); !kept)
        return fail(kept.error());
    if (isGoodCheck(*mass, *shown, scale->readability)) {
        out << fmt::format("“{}” is good: it showed {} for {}.\n", scale->name,
                           amountText(*shown, scale->unit), amountText(*mass, scale->unit));
        return {};
    }
    out << fmt::format(
        "“{}” failed: it showed {} for {}. What it showed since its last good check is marked; see "
        "that it stands level and clean, check it again, or have it serviced.\n",
        scale->name, amountText(*shown, scale->unit), amountText(*mass, scale->unit));
    return {};
}

}  // namespace

Result<void> listEquipment(const Kitchen& kitchen, std::ostream& out) {
    const auto equipment = equipmentIn(kitchen);
    if (!equipment) return fail(equipment.error());
    for (const KnownScale& scale : equipment->scales) out << scaleLine(scale);
    for (const KnownVessel& vessel : equipment->vessels) out << vesselLine(vessel);
    if (equipment->scales.empty()) out << "This kitchen has no scale yet.\n";
    return {};
}

Result<void> keepScale(const ScaleCommand& command, Kitchen& kitchen, std::ostream& out) {
    return command.mass.empty() ? addScale(command, kitchen, out)
                                : checkScale(command, kitchen, out);
}

Result<void> keepVessel(const VesselCommand& command, Kitchen& kitchen, std::ostream& out) {
    const auto equipment = equipmentIn(kitchen);
    if (!equipment) return fail(equipment.error());
    const auto scale = scaleNamed(*equipment, command.scale);
    if (!scale) return fail(scale.error());
    const auto shown = shownOn(*scale, "SHOWN", command.shown);
    if (!shown) return fail(shown.error());
    if (*shown <= Decimal{})
        return fail(
            ofArgument("SHOWN", Error{ErrorCode::NotPositive}.with("found", command.shown)));
    LedgerEntry entry = entryOn(*scale, EntryKind::Vessel);
    entry.vessel = trimmed(command.name);
    entry.shown = *shown;
    const auto kept = recorded(kitchen, entry, kVesselArguments);
    if (!kept) return fail(kept.error());
    out << fmt::format("Kept the tare of “{}”: {} ({})\n", entry.vessel,
                       amountText(*shown, scale->unit), shortId(kept->entry.id));
    return {};
}

}  // namespace nettare
