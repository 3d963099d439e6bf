#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/recipe/dossier.h"
#include "core/support/json.h"

namespace nettare {

/// What a test's documents may refer to: one table row, "test-table 1 00017", and kept recipes by
/// their file.
struct Pantry {
    std::map<std::string, Json> kept{};

    /// Resolves a document of the file "main.json". A reference "./x" opens the file "x".
    [[nodiscard]] Result<Dossier> dossierOf(const Json& document) const;

    /// The row's numbers are invented: a plant food of which all sugars are added.
    [[nodiscard]] static TableFood tableFood();
};

/// The full document with its kept recipe.
[[nodiscard]] Pantry fullPantry();

/// A member of the full document given another value, and what makeDossier() says of it.
struct UnresolvedMember {
    const char* place;
    const char* value;
    ErrorCode code;
    const char* pointer;
};

/// Checks that each document resolves to its error, in the file "main.json".
void checkUnresolved(const std::vector<UnresolvedMember>& cases);

/// The error of the full document with another value at the place.
[[nodiscard]] Error errorAfter(const char* place, const char* value);

}  // namespace nettare
