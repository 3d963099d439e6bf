#pragma once

#include <array>

#include "core/ledger/ledger_entry.h"
#include "core/support/json_reader.h"

namespace nettare {

// The words that entries of the ledger use.

inline constexpr std::array<Word<EntryKind>, 8> kEntryKindWords{{
    {"shown", EntryKind::Shown},
    {"superseded", EntryKind::Superseded},
    {"left out", EntryKind::LeftOut},
    {"taken in", EntryKind::TakenIn},
    {"reason", EntryKind::Reasoned},
    {"scale", EntryKind::Scale},
    {"check", EntryKind::Checked},
    {"vessel", EntryKind::Vessel},
}};

inline constexpr std::array<Word<EntryOrigin>, 3> kEntryOriginWords{{
    {"typed", EntryOrigin::Typed},
    {"device", EntryOrigin::Device},
    {"document", EntryOrigin::Document},
}};

}  // namespace nettare
