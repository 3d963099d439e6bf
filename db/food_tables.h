#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "db/food_table.h"

namespace nettare {

/// Where table files lie.
struct TablePlaces {
    /// `starter` is the table file that comes with the program, `folder` holds those that were
    /// imported ("*.table"); empty or absent: none.
    TablePlaces(std::string starterFile, std::string importFolder = {})
        : starter{std::move(starterFile)}, folder{std::move(importFolder)} {}
    TablePlaces(const char* starterFile) : starter{starterFile} {}

    std::string starter;
    std::string folder;
};

/// The public tables at hand as one: the starter first, then the imported ones by the name of their
/// file. A row that several files hold shows once, as the first of them has it; so the starter's
/// own names and traits stay, and figures do not move, when the table it was chosen from is
/// imported. One thread at a time may use an object of this class.
class FoodTables {
public:
    /// Opens what is there. An imported file that cannot be opened is left out, see failures().
    /// Fails: as FoodTable::open does, for the starter.
    [[nodiscard]] static Result<FoodTables> open(const TablePlaces& places);

    [[nodiscard]] const std::vector<FoodTable>& tables() const { return tables_; }
    /// Why imported files were left out.
    [[nodiscard]] const std::vector<Error>& failures() const { return failures_; }
    /// Number of foods, each counted once.
    [[nodiscard]] std::size_t size() const { return size_; }

    /// The food of that row; nothing where no table has it. Where neither its
    /// row nor its table tells the spread of a component, the median of the starter's groups stands
    /// in as assumed. Fails: TableUnreadable.
    [[nodiscard]] Result<std::optional<TableFood>> find(const TableRow& row) const;
    /// Every value of a row, from the table that has most of them. Fails: TableUnreadable.
    [[nodiscard]] Result<std::vector<FoodValue>> values(const TableRow& row) const;

    /// The food of that row as lists show it, from the first table that has it. Fails:
    /// TableUnreadable.
    [[nodiscard]] Result<std::optional<FoodHit>> hit(const TableRow& row) const;
    /// The groups of every table, each table once: where several files hold one, the fullest
    /// counts. Fails: TableUnreadable.
    [[nodiscard]] Result<std::vector<FoodGroup>> groups() const;
    /// See FoodTable::page(); each food as the first table that has it. Fails: TableUnreadable.
    [[nodiscard]] Result<GroupPage> page(const FoodGroup& group, std::int64_t next,
                                         std::size_t most) const;

    /// Of the first table that has such a group. Fails: TableUnreadable.
    [[nodiscard]] Result<std::optional<GroupDensity>> groupDensity(std::string_view group) const;

    /// At most `most` foods for the words, best first over all tables: see FoodTable::search().
    /// Fails: TableUnreadable.
    [[nodiscard]] Result<FoodSearch> search(std::string_view words, std::size_t most,
                                            const UsedRows& used = {}) const;

private:
    FoodTables() = default;
    /// The file that has most rows of a table; null where none has any.
    [[nodiscard]] const FoodTable* fullest(const std::string& table,
                                           const std::string& release) const;

    std::vector<FoodTable> tables_;
    /// For each table, its rows that an earlier one holds, too, with the place of that table.
    std::vector<std::unordered_map<std::string, std::size_t>> heldEarlier_;
    std::vector<Error> failures_;
    std::size_t size_ = 0;
    PerComponent<std::optional<double>> usualSpread_{};
};

}  // namespace nettare
