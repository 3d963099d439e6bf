#include "db/food_table.h"

#include <SQLiteCpp/Database.h>

#include "db/food_rows.h"
#include "db/group_rows.h"
#include "db/open_read_only.h"
#include "db/search/rank_rows.h"
#include "db/search/search_tables.h"
#include "db/search/table_words.h"
#include "db/sqlite_errors.h"
#include "db/table_format.h"

namespace nettare {

namespace {

Result<void> checkHeader(SQLite::Database& database, const std::string& path) {
    if (database.execAndGet("PRAGMA application_id").getInt() != kTableApplicationId)
        return fail(errorIn(path, ErrorCode::NotATable));
    const int format = database.execAndGet("PRAGMA user_version").getInt();
    if (format < 1) return fail(errorIn(path, ErrorCode::NotATable));
    if (format == kTableFormat) return {};
    const ErrorCode code = format > kTableFormat ? ErrorCode::NewerFormat : ErrorCode::OlderTable;
    return fail(errorIn(path, code)
                    .with("found", std::to_string(format))
                    .with("known", std::to_string(kTableFormat)));
}

}  // namespace

struct FoodTable::File {
    explicit File(const std::string& at) : path{at}, database{openReadOnly(at)} {}

    std::string path;
    SQLite::Database database;
    TableIdentity identity;
    std::size_t foods = 0;
};

FoodTable::FoodTable(std::unique_ptr<File> file) : file_{std::move(file)} {}
FoodTable::FoodTable(FoodTable&&) noexcept = default;
FoodTable& FoodTable::operator=(FoodTable&&) noexcept = default;
FoodTable::~FoodTable() = default;

const std::string& FoodTable::table() const {
    return file_->identity.table;
}
const std::string& FoodTable::release() const {
    return file_->identity.release;
}
const std::string& FoodTable::citation() const {
    return file_->identity.citation;
}
const MeasureSpreads& FoodTable::measureSpreads() const {
    return file_->identity.measureSpreads;
}
std::size_t FoodTable::size() const {
    return file_->foods;
}

bool FoodTable::isOf(const TableRow& row) const {
    return row.table == table() && row.release == release();
}

Result<std::vector<std::string>> FoodTable::numbers() const {
    return guarded(file_->path, [&]() -> Result<std::vector<std::string>> {
        return readNumbers(file_->database);
    });
}

Result<PerComponent<std::optional<double>>> FoodTable::usualSpread() const {
    return guarded(file_->path, [&]() -> Result<PerComponent<std::optional<double>>> {
        return readUsualSpread(file_->database);
    });
}

Result<FoodTable> FoodTable::open(const std::string& path) {
    if (!isFile(path)) return fail(errorIn(path, ErrorCode::TableUnreadable));
    return guarded(path, [&]() -> Result<FoodTable> {
        auto file = std::make_unique<File>(path);
        if (const auto header = checkHeader(file->database, path); !header)
            return fail(header.error());
        file->identity = readIdentity(file->database);
        file->foods = countFoods(file->database);
        return FoodTable{std::move(file)};
    });
}

Result<std::optional<TableFood>> FoodTable::find(std::string_view number) const {
    return guarded(file_->path, [&]() -> Result<std::optional<TableFood>> {
        return readFood(file_->database, file_->identity, number);
    });
}

Result<std::vector<FoodValue>> FoodTable::values(std::string_view number) const {
    return guarded(file_->path, [&]() -> Result<std::vector<FoodValue>> {
        return readFoodValues(file_->database, number);
    });
}

Result<std::vector<FoodGroup>> FoodTable::groups() const {
    return guarded(file_->path, [&]() -> Result<std::vector<FoodGroup>> {
        return readGroups(file_->database, file_->identity);
    });
}

Result<GroupPage> FoodTable::page(std::string_view group, std::int64_t next,
                                  std::size_t most) const {
    return guarded(file_->path, [&]() -> Result<GroupPage> {
        return readGroupPage(file_->database, file_->identity, group, next, static_cast<int>(most));
    });
}

Result<std::vector<GroupDensity>> FoodTable::groupDensities() const {
    return guarded(file_->path, [&]() -> Result<std::vector<GroupDensity>> {
        return readGroupDensities(file_->database);
    });
}

Result<std::optional<GroupDensity>> FoodTable::groupDensity(std::string_view group) const {
    auto all = groupDensities();
    if (!all) return fail(all.error());
    for (GroupDensity& density : *all)
        if (density.group == group) return std::optional{std::move(density)};
    return std::optional<GroupDensity>{};
}

Result<std::vector<FoodHit>> FoodTable::search(std::string_view words, std::size_t most) const {
    auto found = searchTables({.tables = {this, 1}, .heldEarlier = {}}, words, most, {});
    if (!found) return fail(found.error());
    return std::move(found->hits);
}

Result<std::vector<FoundRow>> FoodTable::ranked(const std::vector<AskedWord>& asked) const {
    return guarded(file_->path, [&]() -> Result<std::vector<FoundRow>> {
        return rankRows(file_->database, asked);
    });
}

Result<std::optional<FoodHit>> FoodTable::hit(std::string_view number) const {
    return guarded(file_->path, [&]() -> Result<std::optional<FoodHit>> {
        return readHit(file_->database, file_->identity, number);
    });
}

Result<bool> FoodTable::knows(const AskedWord& word) const {
    return guarded(file_->path,
                   [&]() -> Result<bool> { return hasWord(wordsOfTable(file_->database), word); });
}

Result<std::vector<NearWord>> FoodTable::near(std::string_view typed) const {
    return guarded(file_->path, [&]() -> Result<std::vector<NearWord>> {
        return nearWords(typed, wordsOfTable(file_->database));
    });
}

}  // namespace nettare
