#pragma once

#include "core/recipe/recipe_document.h"
#include "core/support/json_reader.h"

namespace nettare {

// The parts of read_recipe.cpp: each fills its lists of the document from the document's object.

void readWeighing(ObjectReader& root, RecipeDocument& document);
void readFoods(ObjectReader& root, RecipeDocument& document);
/// After "counting", which says how ranges count.
void readLines(ObjectReader& root, RecipeDocument& document);
/// Residues and the cooked weight.
void readResidues(ObjectReader& root, RecipeDocument& document);

/// A unit symbol; UnknownUnit with the symbols that there are.
[[nodiscard]] std::string readUnitSymbol(ObjectReader& reader, std::string_view key);

/// A whole number from 1 to 9999 as text; OutOfRange. 1 where something failed.
[[nodiscard]] int readWholeText(ObjectReader& reader, std::string_view key);

/// A component by its tagname; ComponentUnknown.
[[nodiscard]] Component readComponent(ObjectReader& reader);

}  // namespace nettare
