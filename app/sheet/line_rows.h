#pragma once

#include <QString>

#include <string>
#include <vector>

#include "app/session/draft_session.h"
#include "app/widgets/cell.h"

namespace nettare {

/// Columns of the ingredient table.
enum class LineColumn { Amount, Ingredient, Grams, Spread, Way, Energy, Share, Margin };
inline constexpr int kLineColumns = 8;

/// One line of the draft as its row shows it.
struct LineRow {
    std::string id;
    QString amount;       ///< as the cook would type it
    QString food;         ///< name
    QString preparation;  ///< may be empty
    Cell cells[kLineColumns];
};

/// The rows of a draft, in its order. While the draft has no figures, the right columns show the
/// last good ones in the second ink, and the line that is to blame carries the reason.
[[nodiscard]] std::vector<LineRow> lineRows(const DraftSession& draft);

/// The line that a draft's failure is about; nothing where it is about none.
[[nodiscard]] std::optional<std::size_t> failingLine(const DraftSession& draft);

}  // namespace nettare
