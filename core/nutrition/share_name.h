#pragma once

#include <string>

#include "core/nutrition/share_subject.h"

namespace nettare {

/// What a cook calls what a figure's uncertainty comes from: "prawns, table energy", "olive oil,
/// label energy and serving", "garlic, size not said". `parts` are its sources for that component.
[[nodiscard]] std::string shareName(const ShareSubject& subject, Component component,
                                    const std::vector<Contribution>& parts, const Dossier& dossier);

/// What tells two subjects of one name apart: "line 3", "Sauce, line 3"; empty where nothing does.
[[nodiscard]] std::string shareSite(const ShareSubject& subject, const Dossier& dossier);

/// "oil left in the bowl", "frying oil left over"; of the number of a residue.
[[nodiscard]] std::string residueCalled(const Dossier& dossier, std::uint32_t number);

}  // namespace nettare
