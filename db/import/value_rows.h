#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <vector>

#include "db/build_table/assumed_spread.h"
#include "db/import/table_writer.h"

namespace nettare {

/// Writes the values of foods as they come: those of one food together, by component, so that the
/// table grows at its end. Throws SQLite::Exception.
class ValueRows {
public:
    explicit ValueRows(SQLite::Database& database);

    /// False where the food has a value of that component.
    [[nodiscard]] bool add(std::uint32_t food, const NewValue& value);
    /// Writes what is still held.
    void flush();

    /// Per 100 g; NaN where the food has none.
    [[nodiscard]] double energyKcal(std::uint32_t food) const;
    /// Of our components.
    [[nodiscard]] int known(std::uint32_t food) const;

    struct RelativeSpread {
        std::uint32_t food;
        Component component;
        double relative;
    };
    [[nodiscard]] const std::vector<RelativeSpread>& spreads() const { return spreads_; }

private:
    [[nodiscard]] bool isNew(std::uint32_t food, int component);
    [[nodiscard]] bool write(std::uint32_t food, const NewValue& value);
    void note(std::uint32_t food, const NewValue& value);
    void growTo(std::uint32_t food);

    SQLite::Statement insert_;
    std::vector<NewValue> held_;  ///< of the food `current_`
    std::uint32_t current_ = 0;
    std::vector<std::uint64_t> seen_;  ///< by component: the last food that had it, plus 1
    std::vector<bool> written_;        ///< foods that are no longer held
    std::vector<double> energyKcal_;
    std::vector<std::uint8_t> known_;
    std::vector<RelativeSpread> spreads_;
};

}  // namespace nettare
