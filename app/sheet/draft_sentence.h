#pragma once

#include <QString>

#include "core/support/error.h"
#include "core/support/json.h"

namespace nettare {

/// What the cook calls the place of a pointer into a document: "olive oil", "step 3", "the
/// ceiling"; empty for others.
[[nodiscard]] QString placeName(const Json& document, const std::string& pointer);

/// The sentence of an error of a draft, with its place as the cook calls it.
[[nodiscard]] QString draftSentence(const Json& document, const Error& error);

}  // namespace nettare
