#pragma once

#include <QString>

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "app/session/ledger_series.h"

namespace nettare {

/// What of a line decides which readings can weigh it.
struct LineToBind {
    std::string id;
    std::string food;     ///< as the recipe calls it
    std::string counted;  ///< piece word or unit symbol; empty where neither
    std::string row;      ///< TableRow::text() of the food; may be empty
};

/// One reading of the ledger, and the indication that is its tare.
struct ReadingToBind {
    LedgerReading reading;
    std::optional<LedgerReading> tare;
};

/// Something of the ledger that a line's grams can come from.
struct BindOffer {
    QString text;
    bool ownFood = false;  ///< its name or row is that of the line's food
    std::variant<SeriesToBind, ReadingToBind> what;
};

/// Series whose pieces or measures the line counts, and ratios of its food, those of its own food
/// first, each pooled as was chosen; then the newest readings of its food. Runs in the store's
/// thread.
[[nodiscard]] Result<std::vector<BindOffer>> bindOffers(const Kitchen& kitchen,
                                                        const LineToBind& line,
                                                        const PoolChoices& pools);

}  // namespace nettare
