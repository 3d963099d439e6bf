#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/edit/edit_draft.h"
#include "core/food/food_state.h"
#include "core/ledger/ledger_reading.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

// Where yield series of the bench stand in a document.

/// Places of one series and of its list of readings or pairs.
struct SeriesPlace {
    std::string id;
    SeriesKind kind = SeriesKind::PerPiece;

    [[nodiscard]] std::string_view listName() const;
    [[nodiscard]] std::string member(std::string_view key) const;
    [[nodiscard]] std::string list() const { return member(listName()); }
};

/// What the ledger calls a series of the document.
struct BenchName {
    SeriesKey key;
    std::vector<std::string> tags;
};
/// Nothing where it does not come from the ledger.
[[nodiscard]] std::optional<BenchName> benchOf(const Json& series);
[[nodiscard]] Json benchJson(const SeriesKey& key, const std::vector<std::string>& tags);

/// The index of the document's series of that key and tags.
[[nodiscard]] std::optional<std::size_t> indexOfBench(const Json& document, const SeriesKey& key,
                                                      const std::vector<std::string>& tags);
/// The index of a series of the document's own that has exactly those entries, in whatever order.
[[nodiscard]] std::optional<std::size_t> indexOfSame(const Json& document, const SeriesKey& key,
                                                     const Json::Array& entries);
/// A series with a new id, named by its food and its tags.
[[nodiscard]] Json newSeries(const Json& document, const SeriesKey& key,
                             const std::vector<std::string>& tags, Json list);

/// What the spread of a series of the document is pooled with; by default with nothing.
struct SeriesPooling {
    bool assumed = false;                   ///< with the assumed spread
    std::optional<EarlierEntry> earlier{};  ///< or with that of an earlier series; goes before
};
/// As the series says it.
[[nodiscard]] SeriesPooling poolingOf(const Json& series);
/// "pooled" and "pooled_with" as that pooling has them; nothing where the member is left out.
[[nodiscard]] std::optional<Json> pooledJson(const SeriesPooling& pooling);
[[nodiscard]] std::optional<Json> pooledWithJson(const SeriesPooling& pooling);

/// The state of food that a ratio leads to: cooked for "cooked / raw", drained for "drained /
/// whole" and "drained / total"; nothing for what is left of a thing by trimming.
[[nodiscard]] std::optional<FoodState> stateAfter(std::string_view ratio);

}  // namespace nettare
