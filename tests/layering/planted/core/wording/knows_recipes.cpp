// Planted: the words of a line are read without a recipe.
#include "core/recipe/recipe_document.h"
