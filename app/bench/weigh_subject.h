#pragma once

#include <QString>

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "app/scale/purpose.h"
#include "core/ledger/ledger_reading.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// A food that is weighed for itself, or for a series of the kitchen.
struct FreeSubject {
    std::string what;  ///< as the cook calls it
    std::string row;   ///< TableRow::text() of the food; may be empty
    std::optional<SeriesMark> series;
    WeighedState state = WeighedState::EdiblePortion;

    friend bool operator==(const FreeSubject&, const FreeSubject&) = default;
};

/// What lies on the scale: nothing said yet, something of the open recipe, or a food.
using WeighSubject = std::variant<std::monostate, Purpose, FreeSubject>;

/// The kinds of ratio that a food can be weighed for, as a series names them.
inline constexpr const char* kRatios[] = {"edible / bought", "cooked / raw", "drained / total"};

[[nodiscard]] bool isSame(const WeighSubject& a, const WeighSubject& b);

/// What it is, and what for: "prawn meat" and "one prawn, for its series". `draft` may be null
/// where no recipe is open.
struct SubjectWords {
    QString what, why;
};
[[nodiscard]] SubjectWords subjectWords(const WeighSubject& subject, const DraftSession* draft);

/// True where several pieces may lie on the scale at once.
[[nodiscard]] bool countsPieces(const WeighSubject& subject);
/// True for a ratio: it is weighed before and after.
[[nodiscard]] bool isPair(const WeighSubject& subject);
/// "as bought", "raw", "with its liquid": what the first of a pair is.
[[nodiscard]] QString beforeWord(const SeriesMark& ratio);
[[nodiscard]] QString afterWord(const SeriesMark& ratio);
[[nodiscard]] WeighedState stateBefore(const SeriesMark& ratio);

/// Everything that the open recipe can be weighed for: its lines, its series, the dish, what is
/// left over.
[[nodiscard]] std::vector<Purpose> recipeSubjects(const DraftSession& draft);

/// The next reading of a series of the kitchen.
[[nodiscard]] FreeSubject subjectOf(const SeriesSummary& series);

/// The series that a free subject joins; nothing where none.
[[nodiscard]] std::optional<SeriesKey> seriesOf(const FreeSubject& subject);

/// "per prawn", "per cup", "edible / bought"
[[nodiscard]] QString seriesWords(SeriesKind kind, const std::string& of);

}  // namespace nettare
