#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/food/group_density.h"
#include "core/food/table_food.h"
#include "core/support/result.h"
#include "db/food_groups.h"
#include "db/food_search.h"
#include "db/food_value.h"
#include "db/measure_spreads.h"
#include "db/search/found_row.h"
#include "db/search/near_words.h"

namespace nettare {

/// A public food table in one read-only file, such as the starter. The file is taken as it is: it
/// is never written, locked or watched. One thread at a time may use an object of this class.
class FoodTable {
public:
    /// Opens a table file. Fails: TableUnreadable (missing, a folder, no permission, damaged),
    /// NotATable (some other file), NewerFormat and OlderTable (values "found" and "known": written
    /// by a later or an earlier program).
    [[nodiscard]] static Result<FoodTable> open(const std::string& path);

    FoodTable(FoodTable&&) noexcept;
    FoodTable& operator=(FoodTable&&) noexcept;
    ~FoodTable();

    [[nodiscard]] const std::string& table() const;     ///< "usda-sr"
    [[nodiscard]] const std::string& release() const;   ///< "28"
    [[nodiscard]] const std::string& citation() const;  ///< as its publisher asks to be cited
    [[nodiscard]] const MeasureSpreads& measureSpreads() const;
    /// Number of foods.
    [[nodiscard]] std::size_t size() const;
    /// True for rows of this table in this release.
    [[nodiscard]] bool isOf(const TableRow& row) const;
    /// The numbers of all foods, best first. Fails: TableUnreadable.
    [[nodiscard]] Result<std::vector<std::string>> numbers() const;
    /// The median over the groups of what is assumed where a row has no spread; nothing for a
    /// component without any. Fails: TableUnreadable.
    [[nodiscard]] Result<PerComponent<std::optional<double>>> usualSpread() const;

    /// The food of that number, written as printed; nothing where the table has none. A component
    /// that has a value but no standard error carries the assumed relative spread of its group, or
    /// of all groups. Fails: TableUnreadable.
    [[nodiscard]] Result<std::optional<TableFood>> find(std::string_view number) const;

    /// Every value that the row has, the program's components first, then by the publisher's
    /// number; none where the table has no such food. Fails: TableUnreadable.
    [[nodiscard]] Result<std::vector<FoodValue>> values(std::string_view number) const;

    /// Groups that have foods, by name. Fails: TableUnreadable.
    [[nodiscard]] Result<std::vector<FoodGroup>> groups() const;
    /// At most `most` foods of a group, best first, from where a page before says; 0 for the first.
    /// Fails: TableUnreadable.
    [[nodiscard]] Result<GroupPage> page(std::string_view group, std::int64_t next,
                                         std::size_t most) const;

    /// What a millilitre of the foods of a group weighs, to be stated for a line that has no
    /// density of its own; nothing for a group with too few of them. Fails: TableUnreadable.
    [[nodiscard]] Result<std::optional<GroupDensity>> groupDensity(std::string_view group) const;
    /// Of all groups that have one, by name. Fails likewise.
    [[nodiscard]] Result<std::vector<GroupDensity>> groupDensities() const;

    /// At most `most` foods whose names hold all the words, in any order, each as the start of a
    /// word, singular or plural; accents do not matter. A food that is what the words say comes
    /// before one that only mentions them, plain and raw before processed; the first 300 rows that
    /// match are ranked so. Where nothing is found, a slip in a word is forgiven. No words, no
    /// foods. Fails: TableUnreadable.
    [[nodiscard]] Result<std::vector<FoodHit>> search(std::string_view words,
                                                      std::size_t most) const;

    // What a search over several tables asks each of; all fail with TableUnreadable.

    /// Foods that answer to all words, the first kMostCandidates in row order.
    [[nodiscard]] Result<std::vector<FoundRow>> ranked(const std::vector<AskedWord>& asked) const;
    /// A food as a list of hits shows it; nothing where the table has none of that number.
    [[nodiscard]] Result<std::optional<FoodHit>> hit(std::string_view number) const;
    /// True if some food answers to the word.
    [[nodiscard]] Result<bool> knows(const AskedWord& word) const;
    /// The words that are one slip from what was typed, best first.
    [[nodiscard]] Result<std::vector<NearWord>> near(std::string_view typed) const;

private:
    struct File;
    explicit FoodTable(std::unique_ptr<File> file);

    std::unique_ptr<File> file_;
};

}  // namespace nettare
