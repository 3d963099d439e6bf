#include "db/import/table_writer.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <fmt/format.h>

#include <array>
#include <cmath>
#include <map>
#include <set>

#include "db/build_table/bind.h"
#include "db/build_table/whole_file.h"
#include "db/import/import_folder.h"
#include "db/import/number_index.h"
#include "db/import/ranked_foods.h"
#include "db/import/same_bytes.h"
#include "db/import/staged_foods.h"
#include "db/import/table_facts.h"
#include "db/import/value_rows.h"
#include "db/sql_step.h"
#include "db/sqlite_errors.h"
#include "db/table_format.h"

namespace nettare {

namespace {

constexpr int kFirstOtherComponent = 100;

/// Nobody reads the file before it is whole, so neither journal nor early syncing is needed. The
/// caches bound what the writer holds, in KiB.
constexpr auto kFastAndBounded =
    "PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA locking_mode = EXCLUSIVE; "
    "PRAGMA cache_size = -49152; PRAGMA temp.cache_size = -8192";

SQLite::Database newTableFile(const std::string& path) {
    SQLite::Database database{path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    database.exec(kFastAndBounded);
    database.exec("PRAGMA application_id = " + std::to_string(kTableApplicationId));
    database.exec("PRAGMA user_version = " + std::to_string(kTableFormat));
    database.exec("BEGIN");
    for (const SqlStep& step : tableSchema()) database.exec(std::string{step.text});
    return database;
}

std::string pathOf(const TableTarget& target) {
    return target.folder + "/" + tableFileName(target.table, target.release);
}

/// The ids of codes, in the order of their first use.
using CodeIds = std::map<std::string, int, std::less<>>;

}  // namespace

struct TableWriter::File {
    explicit File(const TableTarget& told)
        : target{told},
          path{pathOf(told)},
          whole{path},
          database{newTableFile(told.dryRun ? std::string{} : whole.partialPath())},
          foods{database},
          values{database},
          insertMeasure{database, "INSERT OR IGNORE INTO measure VALUES (?, ?, ?, ?, ?, ?, ?, ?)"} {
    }

    /// Runs work on the file and keeps what SQLite throws; nothing more is done after that.
    template <class Work>
    void attempt(const Work& work) {
        if (failure) return;
        try {
            work();
        } catch (const SQLite::Exception& cause) {
            failure = errorIn(path, ErrorCode::FileNotWritable).with("reason", cause.what());
        }
    }

    int idOf(CodeIds& ids, const char* sql, std::string_view code, std::string_view description);
    void writeComponents();
    bool writeAll(const GoOn& goOn);

    TableTarget target;
    std::string path;
    std::optional<ImportFolder> folder;
    WholeFile whole;
    SQLite::Database database;
    StagedFoods foods;
    ValueRows values;
    SQLite::Statement insertMeasure;
    std::optional<Error> failure;
    WrittenRows rows;
    NumberIndex numbers;
    GroupedFoods grouped;
    CodeIds groups, derivations, sources, components;
    PerComponent<std::string> ourNumbers;
    std::set<std::string, std::less<>> tagnames;
    std::map<std::string, std::string, std::less<>> inputs;
    std::vector<std::uint16_t> measuresOf;  ///< by food
};

int TableWriter::File::idOf(CodeIds& ids, const char* sql, std::string_view code,
                            std::string_view description) {
    const auto [place, isNew] =
        ids.try_emplace(std::string{code}, static_cast<int>(ids.size()) + 1);
    const int id = place->second;
    if (isNew)
        attempt([&] {
            SQLite::Statement row{database, sql};
            row.bind(1, id);
            bindText(row, 2, code);
            if (row.getBindParameterCount() > 2) bindText(row, 3, description);
            row.exec();
        });
    return id;
}

void TableWriter::File::writeComponents() {
    for (const ComponentFacts& facts : allComponents()) {
        SQLite::Statement row{database, "INSERT INTO component VALUES (?, ?, ?, ?, ?)"};
        row.bind(1, static_cast<int>(indexOf(facts.component)));
        bindText(row, 2, facts.tagname);
        bindNote(row, 3, ourNumbers[indexOf(facts.component)]);
        bindText(row, 4, facts.name);
        bindText(row, 5, facts.unit);
        row.exec();
    }
}

/// False where goOn said to stop.
bool TableWriter::File::writeAll(const GoOn& goOn) {
    values.flush();
    writeComponents();
    for (const auto& [name, hash] : inputs) {
        SQLite::Statement row{database, "INSERT INTO input VALUES (?, ?)"};
        bindText(row, 1, name);
        bindText(row, 2, hash);
        row.exec();
    }
    writeIdentity(database, target, writeDensities(database, grouped));
    writeAssumedSpreads(database, grouped, values.spreads());
    if (!writeRankedFoods(database, grouped, values, goOn)) return false;
    database.exec("COMMIT");
    return true;
}

Result<TableWriter> TableWriter::begin(const TableTarget& target) {
    std::optional<ImportFolder> folder;
    if (!target.dryRun) {
        auto held = ImportFolder::hold(target.folder);
        if (!held) return fail(held.error());
        folder = std::move(*held);
    }
    try {
        auto file = std::make_unique<File>(target);
        file->folder = std::move(folder);
        return TableWriter{std::move(file)};
    } catch (const SQLite::Exception& cause) {
        return fail(
            errorIn(pathOf(target), ErrorCode::FileNotWritable).with("reason", cause.what()));
    }
}

TableWriter::TableWriter(std::unique_ptr<File> file) : file_{std::move(file)} {}
TableWriter::TableWriter(TableWriter&&) noexcept = default;
TableWriter& TableWriter::operator=(TableWriter&&) noexcept = default;
TableWriter::~TableWriter() = default;

const std::string& TableWriter::path() const {
    return file_->path;
}
const WrittenRows& TableWriter::rows() const {
    return file_->rows;
}
const std::optional<Error>& TableWriter::failure() const {
    return file_->failure;
}

void TableWriter::input(std::string_view name, std::string_view sha256) {
    file_->inputs[std::string{name}] = sha256;
}

void TableWriter::ourComponent(Component component, std::string_view number) {
    file_->ourNumbers[indexOf(component)] = number;
}

int TableWriter::component(std::string_view number, std::string_view tagname, std::string_view name,
                           std::string_view unit) {
    const auto [place, isNew] = file_->components.try_emplace(
        std::string{number}, kFirstOtherComponent + static_cast<int>(file_->components.size()));
    const int id = place->second;
    if (!isNew) return id;
    const bool own =
        !tagname.empty() && !componentNamed(tagname) && file_->tagnames.emplace(tagname).second;
    file_->attempt([&] {
        SQLite::Statement row{file_->database, "INSERT INTO component VALUES (?, ?, ?, ?, ?)"};
        row.bind(1, id);
        bindNote(row, 2, own ? std::string{tagname} : std::string{});
        bindNote(row, 3, std::string{number});
        bindText(row, 4, name);
        bindText(row, 5, unit);
        row.exec();
    });
    return id;
}

int TableWriter::group(std::string_view name) {
    const int id = file_->idOf(file_->groups, "INSERT INTO food_group VALUES (?, ?)", name, {});
    if (id > static_cast<int>(file_->grouped.groups.size()))
        file_->grouped.groups.emplace_back(name);
    return id;
}

int TableWriter::derivation(std::string_view code, std::string_view description) {
    return file_->idOf(file_->derivations, "INSERT INTO derivation VALUES (?, ?, ?)", code,
                       description);
}

int TableWriter::source(std::string_view code, std::string_view description) {
    return file_->idOf(file_->sources, "INSERT INTO source VALUES (?, ?, ?)", code, description);
}

std::optional<std::uint32_t> TableWriter::food(const NewFood& food) {
    const auto place = file_->numbers.add(food.number);
    if (!place) return std::nullopt;
    // Ids count from 0, as the places of the number index do.
    file_->grouped.groupOf.push_back(static_cast<std::uint32_t>(food.group));
    file_->attempt([&] { file_->foods.add(*place, food); });
    ++file_->rows.foods;
    return place;
}

std::optional<std::uint32_t> TableWriter::find(std::string_view number) const {
    return file_->numbers.find(number);
}

void TableWriter::setGroup(std::uint32_t food, int group) {
    file_->grouped.groupOf[food] = static_cast<std::uint32_t>(group);
    file_->attempt([&] { file_->foods.setGroup(food, group); });
}

void TableWriter::setFactors(std::uint32_t food, const ConversionFactors& factors) {
    file_->attempt([&] { file_->foods.setFactors(food, factors); });
}

void TableWriter::setPlace(std::uint32_t food, ProcessingPlace place) {
    file_->attempt([&] { file_->foods.setPlace(food, place); });
}

void TableWriter::addOtherNames(std::uint32_t food, const std::vector<std::string>& names) {
    file_->attempt([&] { file_->foods.addOtherNames(food, names); });
}

bool TableWriter::value(std::uint32_t food, const NewValue& value) {
    if (!std::isfinite(value.per100g) || value.per100g < 0) return false;
    bool taken = true;
    file_->attempt([&] { taken = file_->values.add(food, value); });
    if (taken) ++file_->rows.values;
    return taken;
}

bool TableWriter::measure(std::uint32_t food, const HouseholdMeasure& measure) {
    const auto isPositive = [](double number) { return std::isfinite(number) && number > 0; };
    if (!isPositive(measure.amount) || !isPositive(measure.grams)) return false;
    if (file_->measuresOf.size() < file_->rows.foods) file_->measuresOf.resize(file_->rows.foods);
    file_->attempt([&] {
        SQLite::Statement& row = file_->insertMeasure;
        row.bind(1, food);
        row.bind(2, file_->measuresOf[food]++);
        row.bind(3, measure.amount);
        bindText(row, 4, measure.unit);
        bindNote(row, 5, measure.qualifier);
        row.bind(6, measure.grams);
        bindCount(row, 7, measure.n);
        bindNumber(row, 8, measure.standardDeviation);
        row.exec();
        row.reset();
    });
    ++file_->rows.measures;
    return true;
}

Result<TablePut> TableWriter::finish(const GoOn& goOn) {
    bool whole = true;
    file_->attempt([&] { whole = file_->writeAll(goOn); });
    if (file_->failure) return fail(*file_->failure);
    if (!whole) return fail(errorIn(file_->path, ErrorCode::ImportStopped));
    if (file_->target.dryRun) return TablePut::NotKept;
    if (sameBytes(file_->whole.partialPath(), file_->path)) return TablePut::Unchanged;
    if (const auto put = file_->whole.putInPlace(); !put) return fail(put.error());
    return TablePut::Written;
}

std::string tableFileName(std::string_view table, std::string_view release) {
    std::string name;
    const auto add = [&](std::string_view part) {
        for (const char c : part) {
            const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                               (c >= '0' && c <= '9') || c == '.' || c == '-';
            if (plain)
                name += c;
            else
                name +=
                    fmt::format("%{:02X}", static_cast<unsigned>(static_cast<unsigned char>(c)));
        }
    };
    add(table);
    name += '_';
    add(release);
    return name + ".table";
}

}  // namespace nettare
