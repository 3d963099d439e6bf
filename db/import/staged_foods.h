#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <string>
#include <vector>

#include "db/import/table_writer.h"

namespace nettare {

/// The foods of a table that is being written, in a file without a name until their rank is known.
/// Throws SQLite::Exception.
class StagedFoods {
public:
    explicit StagedFoods(SQLite::Database& database);

    void add(std::uint32_t id, const NewFood& food);
    void setGroup(std::uint32_t id, int group);
    void setFactors(std::uint32_t id, const ConversionFactors& factors);
    void setPlace(std::uint32_t id, ProcessingPlace place);
    void addOtherNames(std::uint32_t id, const std::vector<std::string>& names);

private:
    SQLite::Statement insert_, group_, factors_, place_, names_;
};

}  // namespace nettare
