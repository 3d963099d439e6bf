#pragma once

#include <QString>

#include <optional>
#include <string>

#include "app/session/draft_session.h"
#include "core/food/group_density.h"

namespace nettare {

class KitchenSession;

/// The density of the group of a line's food, where the line is a volume and its food has no
/// measure of one: to be stated with a click, never taken in silence. Nothing for other lines.
[[nodiscard]] std::optional<GroupDensity> densityOffer(const KitchenSession& kitchen,
                                                       const std::string& line);

/// "density of oil, 0.92 g/ml"
[[nodiscard]] QString densityOfferText(const GroupDensity& density);

/// States it for the line, undoably. Fails as setDensity().
[[nodiscard]] Result<void> stateDensity(DraftSession& draft, const std::string& line,
                                        const GroupDensity& density);

}  // namespace nettare
