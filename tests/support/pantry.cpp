#include "pantry.h"

#include "core/recipe/read_recipe.h"

#include "json_edit.h"
#include "recipe_documents.h"

#include <catch2/catch.hpp>

namespace nettare {

TableFood Pantry::tableFood() {
    TableFood food;
    food.row = {"test-table", "1", "00017"};
    food.name = "quark, of the test";
    food.plant = true;
    food.addedSugars = {AddedSugarKind::AllOfItsSugars, 0, "the table says so"};
    return food;
}

Result<Dossier> Pantry::dossierOf(const Json& document) const {
    const FoodLookup foods = [](const TableRow& row) -> Result<std::optional<TableFood>> {
        if (row.table != "test-table") return fail(Error{ErrorCode::NotATable});
        if (row != tableFood().row) return std::nullopt;
        return tableFood();
    };
    const RecipeLookup recipes = [this](const std::string& reference,
                                        const std::string&) -> Result<LoadedRecipe> {
        const std::string file = reference.starts_with("./") ? reference.substr(2) : reference;
        const auto found = kept.find(file);
        if (found == kept.end()) return fail(Error{ErrorCode::FileNotReadable, file});
        const auto read = readRecipe(found->second);
        if (!read) return fail(read.error());
        return LoadedRecipe{file, *read};
    };
    const auto read = readRecipe(document);
    REQUIRE(read);
    return makeDossier({"main.json", *read}, foods, recipes);
}

Pantry fullPantry() {
    return {{{"compote.json", smallRecipe()}}};
}

Error errorAfter(const char* place, const char* value) {
    const auto dossier = fullPantry().dossierOf(with(fullRecipe(), place, jsonOf(value)));
    INFO(place << " becomes " << value);
    REQUIRE_FALSE(dossier);
    return dossier.error();
}

void checkUnresolved(const std::vector<UnresolvedMember>& cases) {
    for (const UnresolvedMember& one : cases) {
        INFO(one.place << " becomes " << one.value);
        const Error error = errorAfter(one.place, one.value);
        CHECK(error.code == one.code);
        CHECK(error.pointer == one.pointer);
        CHECK(error.file == "main.json");
    }
}

}  // namespace nettare
