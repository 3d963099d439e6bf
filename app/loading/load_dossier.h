#pragma once

#include <memory>
#include <string>

#include "core/recipe/dossier.h"
#include "db/food_tables.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Reads recipe documents and what they need: kept recipes beside them and rows of the table files.
class DossierLoader {
public:
    /// `places` are the table files to look foods up in; they are opened when a document first
    /// asks.
    explicit DossierLoader(TablePlaces places) : places_{std::move(places)} {}

    /// The dossier of the document at that path, with the own foods of a kitchen where one is
    /// given. Errors name the file that is at fault.
    [[nodiscard]] Result<Dossier> load(const std::string& path, const Kitchen* kitchen = nullptr);

    /// The table files, opened. Fails as FoodTables::open does.
    [[nodiscard]] Result<const FoodTables*> tables();
    [[nodiscard]] const TablePlaces& places() const { return places_; }

private:
    Result<LoadedRecipe> read(const std::string& path) const;
    Result<std::optional<TableFood>> find(const TableRow& row, const Kitchen* kitchen);

    TablePlaces places_;
    std::unique_ptr<FoodTables> tables_;
};

}  // namespace nettare
