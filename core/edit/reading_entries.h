#pragma once

#include "core/edit/edit_draft.h"
#include "core/edit/weighing_edits.h"

namespace nettare {

/// Adds scales, vessels, indications and the reading itself, where they are not there. Answers
/// what is wrong: UnknownReference, DuplicateId.
[[nodiscard]] std::optional<Error> addReadingEntries(const Json& document,
                                                     const RecordedReading& recorded,
                                                     EditDraft& draft);

// The entries as documents write them.

[[nodiscard]] Json scaleJson(const ScaleEntry& scale);
[[nodiscard]] Json vesselJson(const VesselEntry& vessel);
[[nodiscard]] Json indicationJson(const RecordedIndication& indication);
[[nodiscard]] Json readingJson(const RecordedReading& recorded);

}  // namespace nettare
