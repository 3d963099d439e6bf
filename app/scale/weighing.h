#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "app/scale/purpose.h"
#include "core/edit/weighing_edits.h"
#include "core/ledger/ledger_entry.h"

namespace nettare {

/// The scale shows zero with nothing, or the empty bowl, on it.
struct Zeroed {
    friend bool operator==(const Zeroed&, const Zeroed&) = default;
};
/// A tare that the scale showed just now, and whether the ledger has it.
struct ShownTare {
    std::string id;  ///< UUID
    std::string at;
    Decimal shown;
    bool inLedger = false;
    friend bool operator==(const ShownTare& a, const ShownTare& b) { return a.id == b.id; }
};
using Tare = std::variant<Zeroed, VesselEntry, ShownTare>;

/// A weighing as it stands on the scale strip.
struct Weighing {
    ScaleEntry scale;
    bool scaleIsNew = false;  ///< the document does not have it yet
    Tare tare = Zeroed{};
    /// UUID of the ledger's entry that weighed the vessel `tare` empty; may be empty.
    std::string vesselEntry;
    Decimal shown;
    int pieces = 1;
    bool instead = false;  ///< of what was weighed for the same before
};

/// What lies on the scale, exactly: shown less tare, in the scale's unit.
[[nodiscard]] Decimal netOf(const Weighing& weighing);

/// The same in grams, for what is shown of it.
[[nodiscard]] double netGramsOf(const Weighing& weighing);

/// True where the scale can show that number: a multiple of its step.
[[nodiscard]] bool isShowable(Decimal shown, const ScaleEntry& scale);

/// What one press of "Record reading" writes: the ledger's entries and the reading that the edit
/// binds. Ids are new UUIDs; `at` is the time of the press.
struct Recording {
    std::vector<LedgerEntry> entries;
    RecordedReading reading;
};
[[nodiscard]] Recording recordingOf(const Weighing& weighing, const DraftSession& draft,
                                    const Purpose& purpose, const std::string& at);

/// Says in the ledger's entry of the gross what the document binds its reading to once the edit is
/// applied: food, purpose, row and series.
void nameSubject(Recording& recording, const Json& document, const Edit& edit);

/// A new UUID, as ledgers write it.
[[nodiscard]] std::string freshUuid();

}  // namespace nettare
