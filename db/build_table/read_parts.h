#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "db/build_table/row_reader.h"
#include "db/build_table/table_text.h"

namespace nettare {

/// The foods being read, with an index by number.
class FoodList {
public:
    /// False where the number is there already.
    bool add(TableFood food);
    /// Null where there is none.
    [[nodiscard]] TableFood* find(const std::string& number);
    [[nodiscard]] std::vector<TableFood>& all() { return foods_; }

private:
    std::vector<TableFood> foods_;
    std::map<std::string, std::size_t> indexByNumber_;
};

// One function per file of the folder; each fills its part of the foods. Errors as readTableText.

[[nodiscard]] Result<void> readFoods(const std::string& folder, FoodList& foods);
[[nodiscard]] Result<void> readComponents(const std::string& folder, FoodList& foods);
[[nodiscard]] Result<void> readSpreads(const std::string& folder, FoodList& foods);
[[nodiscard]] Result<void> readMeasureRows(const std::string& folder, FoodList& foods);
/// `file` is one of the two files of other names.
[[nodiscard]] Result<void> readNames(const std::string& folder, const std::string& file,
                                     FoodList& foods);
[[nodiscard]] Result<void> readTraits(const std::string& folder, FoodList& foods);
[[nodiscard]] Result<std::vector<std::string>> readEveryday(const std::string& folder,
                                                            FoodList& foods);

/// The food that the row's next field names; notes FoodNotFound and gives null where there is none.
[[nodiscard]] TableFood* foodOfRow(RowReader& row, FoodList& foods);

}  // namespace nettare
