#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/edit/residue_edits.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

/// What a scale showed, on its way into a document: its id is that of the ledger's entry.
struct RecordedIndication {
    std::string id;
    std::string scale;  ///< id in the document, or of one of RecordedReading::scales
    Decimal shown;      ///< in the scale's unit
    WeighedState state = WeighedState::EdiblePortion;
    std::string at;  ///< UTC time with offset; may be empty
};

// What was weighed.

/// The grams of a line; readings of it add up.
struct ForLine {
    std::string line;
};
/// A piece or measure of a line's food: joins a series, or begins one for what the line counts.
struct ForSeries {
    std::string line;
    std::string series{};  ///< id; empty: the line's own, or a new one
    std::string name{};    ///< of a new one
    SeriesUse use = SeriesUse::Others;
};
/// The finished dish.
struct ForCooked {};
/// Bones, shells or sticks in the weight of the finished dish.
struct ForNotEaten {};
/// What is left over of one line, or of a mixture of several; no line: of unknown make-up. Where
/// `madeOf` is given it says what it is. A residue of the same make-up that is there gets the
/// reading.
struct ForLeftOver {
    std::vector<std::string> lines;
    std::optional<ResidueMakeup> madeOf{};
};
/// The finished dish of one more test cook of this revision; each reading is a cook of its own.
struct ForOtherCook {};
/// One finished piece: joins the series of them, or begins it.
struct ForFinishedPiece {};
using ReadingPurpose = std::variant<ForLine, ForSeries, ForCooked, ForNotEaten, ForLeftOver,
                                    ForOtherCook, ForFinishedPiece>;

/// A reading: an indication, its tare, and what was weighed.
struct RecordedReading {
    RecordedIndication gross;
    std::variant<std::string, RecordedIndication> tare;  ///< id of a vessel, or an indication
    int pieces = 1;                                      ///< weighed together; 1 to 9999
    ReadingPurpose purpose;
    /// Takes the place of the readings bound to the same so far; a series takes every reading.
    bool instead = false;
    std::vector<ScaleEntry> scales;    ///< to add where the document has none of that id
    std::vector<VesselEntry> vessels;  ///< the same
};

/// Puts a reading into the document and binds it. The reading's id is that of its gross. An
/// indication that is there already, such as the empty bowl, is used again. A line's chosen way
/// gives way to the new reading. Fails: UnknownReference for a line, series, scale or vessel that
/// is not there; DuplicateId for a reading that is; CookedWeightMissing for what is not eaten, or
/// another cook, of a dish that was not weighed; or as readRecipe().
[[nodiscard]] Result<Edit> recordReading(const Json& document, const RecordedReading& recorded);

/// Takes a reading off whatever it is bound to; the reading stays. A residue or series without
/// readings goes. Fails: UnknownReference.
[[nodiscard]] Result<Edit> unbindReading(const Json& document, std::string_view reading);

}  // namespace nettare
