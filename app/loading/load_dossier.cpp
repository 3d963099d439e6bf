#include "app/loading/load_dossier.h"

#include <filesystem>

#include "app/files/read_file.h"
#include "core/food/own_food.h"
#include "core/recipe/read_recipe.h"

namespace nettare {

Result<LoadedRecipe> DossierLoader::read(const std::string& path) const {
    const auto text = readFile(path);
    if (!text) return fail(text.error());
    auto document = readRecipeText(*text);
    if (document) return LoadedRecipe{path, std::move(*document)};
    Error error = document.error();
    error.file = path;
    return fail(error);
}

Result<const FoodTables*> DossierLoader::tables() {
    if (!tables_) {
        auto opened = FoodTables::open(places_);
        if (!opened) {
            Error error = opened.error();
            if (error.file.empty()) error.file = places_.starter;
            return fail(error);
        }
        tables_ = std::make_unique<FoodTables>(std::move(*opened));
    }
    return tables_.get();
}

Result<std::optional<TableFood>> DossierLoader::find(const TableRow& row, const Kitchen* kitchen) {
    if (kitchen != nullptr && isOwn(row)) return kitchen->food(row);
    const auto open = tables();
    if (!open) return fail(open.error());
    return (*open)->find(row);
}

Result<Dossier> DossierLoader::load(const std::string& path, const Kitchen* kitchen) {
    const auto recipe = read(std::filesystem::path{path}.lexically_normal().string());
    if (!recipe) return fail(recipe.error());
    const FoodLookup foods = [&](const TableRow& row) { return find(row, kitchen); };
    const RecipeLookup recipes = [this](const std::string& reference,
                                        const std::string& fromFile) -> Result<LoadedRecipe> {
        const std::filesystem::path beside = std::filesystem::path{fromFile}.parent_path();
        return read((beside / reference).lexically_normal().string());
    };
    auto dossier = makeDossier(*recipe, foods, recipes);
    if (dossier) return dossier;
    Error error = dossier.error();
    if (error.file.empty()) error.file = path;
    return fail(error);
}

}  // namespace nettare
