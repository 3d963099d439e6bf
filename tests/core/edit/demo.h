#pragma once

#include "core/edit/line_edits.h"
#include "core/support/json.h"
#include "random_changes.h"

namespace demo {

using namespace nettare;

/// The skewers of the demo.
inline Json skewers() {
    return demoDocuments().front();
}

inline FoodChoice tableFood(const std::string& number, const std::string& name) {
    return {"", {"usda-sr", "28", number}, name};
}

}  // namespace demo
