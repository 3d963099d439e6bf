#pragma once

#include <vector>

#include "app/scale/weighing.h"

namespace nettare {

/// A scale that can be chosen.
struct ScaleChoice {
    ScaleEntry scale;
    bool isNew = false;  ///< the document gets it with its first reading
};

/// The scales of the document, then scales of usual steps that it does not have yet.
[[nodiscard]] std::vector<ScaleChoice> scaleChoices(const DraftSession& draft);

/// The vessels whose tare was shown in that unit.
[[nodiscard]] std::vector<VesselEntry> vesselChoices(const DraftSession& draft,
                                                     const std::string& unit);

/// "pocket scale, d = 0.1 g"
[[nodiscard]] QString scaleText(const ScaleEntry& scale);

}  // namespace nettare
