#pragma once

#include <memory>
#include <string>

#include "core/recipe/dossier.h"
#include "db/food_table.h"

namespace nettare {

/// Reads recipe documents and what they need: kept recipes beside them and rows of the table files.
class DossierLoader {
public:
    /// `tablePath` is the table file to look foods up in; it is opened when a document first asks.
    explicit DossierLoader(std::string tablePath) : tablePath_{std::move(tablePath)} {}

    /// The dossier of the document at that path. Errors name the file that is at fault.
    [[nodiscard]] Result<Dossier> load(const std::string& path);

    /// The table file, opened. Fails as FoodTable::open does.
    [[nodiscard]] Result<const FoodTable*> table();

private:
    Result<LoadedRecipe> read(const std::string& path) const;
    Result<std::optional<TableFood>> find(const TableRow& row);

    std::string tablePath_;
    std::unique_ptr<FoodTable> table_;
};

}  // namespace nettare
