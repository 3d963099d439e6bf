#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/edit/edit.h"
#include "core/edit/series_place.h"
#include "core/ledger/ledger_reading.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

/// A yield series of the ledger on its way into a document.
struct SeriesToBind {
    SeriesKey key;
    std::vector<std::string> tags;           ///< sorted; all readings bear them
    std::vector<LedgerReading> readings;     ///< all of it; those that count are bound
    std::vector<LedgerReading> tares;        ///< the indications that they refer to
    std::optional<SeriesPooling> pooling{};  ///< nothing: as the document has it
};

/// Puts the series with its readings into the document, unless it is there, and binds the line to
/// it: by piece or measure, or as its trim where it is a ratio; a ratio "cooked / raw", or "drained
/// / whole", becomes the line's yield. A line that was weighed itself keeps the weighing and goes
/// by the series. The document's own series of exactly these readings becomes the bench's. Fails:
/// UnknownReference (the line), SeriesEmpty, SeriesOfOther, or as readRecipe().
[[nodiscard]] Result<Edit> bindToSeries(const Json& document, std::string_view line,
                                        const SeriesToBind& series, SeriesUse use);

/// The series of the document that came from the ledger, without readings: what followSeries() is
/// to be asked with.
[[nodiscard]] std::vector<SeriesToBind> followedSeries(const Json& document);

/// Brings a series of the document that came from the ledger up to what the ledger says now;
/// nothing where it is, or where the document has no such series. Readings that the ledger's series
/// never had stay, and so does how it is pooled. A series of which nothing counts any more goes,
/// with what was bound to it. What was taken out of it stays among the document's readings, as
/// after unbindReading(). Fails as readRecipe().
[[nodiscard]] Result<std::optional<Edit>> followSeries(const Json& document,
                                                       const SeriesToBind& series);

/// Binds the line to that one reading alone, as its weight. Fails: UnknownReference (also where the
/// reading has no net, or its tare is not given), or as readRecipe().
[[nodiscard]] Result<Edit> bindToReading(const Json& document, std::string_view line,
                                         const LedgerReading& reading,
                                         const std::optional<LedgerReading>& tare);

}  // namespace nettare
