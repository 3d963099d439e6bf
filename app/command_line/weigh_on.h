#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/ledger/bench_equipment.h"
#include "core/ledger/ledger_reading.h"
#include "core/support/result.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

// What a reading of the command line stands on. Errors name the argument that is at fault.

/// The kitchen's scales and vessels.
[[nodiscard]] Result<BenchEquipment> equipmentIn(const Kitchen& kitchen);

/// The scale of that name, or the only one where none is named. Fails: ScaleNotKnown,
/// ScaleAmbiguous.
[[nodiscard]] Result<KnownScale> scaleNamed(const BenchEquipment& equipment,
                                            const std::string& name);

/// A vessel whose tare is known in the scale's unit. Fails: VesselNotKnown, VesselOtherUnit.
[[nodiscard]] Result<KnownVessel> vesselNamed(const BenchEquipment& equipment,
                                              const KnownScale& scale, const std::string& name);

/// What that scale can show, as typed. Fails: like readShown(), NotOfTheScale, AboveCapacity.
[[nodiscard]] Result<Decimal> shownOn(const KnownScale& scale, std::string_view argument,
                                      const std::string& typed);

/// A number above zero, as typed. Fails: like readShown(), NotPositive.
[[nodiscard]] Result<Decimal> positiveOf(std::string_view argument, const std::string& typed);

/// The indication whose id begins so, in letters of any case. Fails: ReadingNotFound.
[[nodiscard]] Result<LedgerReading> indicationNamed(const Kitchen& kitchen,
                                                    std::string_view argument,
                                                    const std::string& id);
/// The same, which has not been overruled. Fails: ReadingNotFound, ReadingOverruled.
[[nodiscard]] Result<LedgerReading> readingNamed(const Kitchen& kitchen, std::string_view argument,
                                                 const std::string& id);

/// An entry of now with a new id, typed.
[[nodiscard]] LedgerEntry entryOfNow(EntryKind kind);
/// The same on a scale.
[[nodiscard]] LedgerEntry entryOn(const KnownScale& scale, EntryKind kind);

/// The argument that fills a member of an entry.
struct EntryArgument {
    std::string_view pointer, argument;
};
/// Appends an entry; what cannot stand in it is said of the argument that it came from. Fails: like
/// Kitchen::record().
[[nodiscard]] Result<ChainedEntry> recorded(Kitchen& kitchen, const LedgerEntry& entry,
                                            std::span<const EntryArgument> arguments);

/// As much of an id as names an entry among people.
[[nodiscard]] std::string shortId(const std::string& id);

}  // namespace nettare
