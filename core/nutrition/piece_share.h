#pragma once

#include "core/nutrition/linear_form.h"
#include "core/support/result.h"

namespace nettare {

/// How far the share of one piece may be off a fair one, relative: s / m of the finished pieces
/// that were weighed one by one, else the assumed spread of pieces. Fails as statisticsOf().
[[nodiscard]] Result<Source> pieceShare(const Dossier& dossier);

}  // namespace nettare
