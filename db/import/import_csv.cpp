#include <vector>

#include "core/support/json.h"
#include "core/support/sha256.h"
#include "db/import/csv_cell.h"
#include "db/import/csv_columns.h"
#include "db/import/csv_food.h"
#include "db/import/csv_stream.h"
#include "db/import/import_files.h"
#include "db/import/import_parts.h"
#include "db/import/import_run.h"
#include "db/import/table_writer.h"

namespace nettare {

namespace {

/// What a table without groups calls the group of all its foods.
constexpr std::string_view kOnlyGroup = "food";

/// Writes the foods of a CSV, row by row.
class CsvImport {
public:
    CsvImport(const CsvMapping& mapping, CsvReader& reader, ImportRun& run, TableWriter& writer)
        : mapping_{mapping}, reader_{reader}, run_{run}, writer_{writer} {}

    Result<void> readAll() {
        if (auto there = readHeader(); !there) return there;
        while (true) {
            const auto there = reader_.next();
            if (!there) return fail(there.error());
            if (!*there) return {};
            takeRow();
            if (auto goesOn = run_.isAt(reader_.bytesRead()); !goesOn) return goesOn;
        }
    }

private:
    Result<void> readHeader() {
        const auto there = reader_.next();
        if (!there) return fail(there.error());
        if (!*there) return fail(reader_.errorHere(ErrorCode::CsvNoHeader));
        if (const auto fault = reader_.fault()) return fail(reader_.errorHere(*fault));
        auto columns = findColumns(mapping_, reader_);
        if (!columns) return fail(columns.error());
        columns_ = std::move(*columns);
        for (const ValueColumn& column : columns_.values)
            components_.push_back(componentOf(column));
        return {};
    }

    /// The id of a column's component in the table file; what is not ours goes by its tagname.
    int componentOf(const ValueColumn& column) {
        if (column.component) return static_cast<int>(indexOf(*column.component));
        const std::string& tagname = mapping_.others[column.other].tagname;
        return writer_.component(tagname, tagname, column.header, column.unit);
    }

    void takeRow() {
        const auto texts = readCsvFood(reader_, columns_, mapping_);
        if (!texts) return run_.reject(texts.error());
        NewFood food;
        food.number = texts->number;
        food.name = texts->name;
        food.group = writer_.group(texts->group.empty() ? kOnlyGroup : texts->group);
        food.otherNames = texts->otherNames;
        if (columns_.refuse)
            food.refusePercent =
                taken(readRefuseCell(reader_.fields()[*columns_.refuse], mapping_));
        const auto id = writer_.food(food);
        if (!id)
            return run_.reject(
                reader_.errorHere(ErrorCode::FoodNumberTwice).with("found", food.number));
        for (std::size_t i = 0; i < columns_.values.size(); ++i) takeValue(*id, i);
    }

    void takeValue(std::uint32_t food, std::size_t column) {
        const ValueColumn& where = columns_.values[column];
        const auto per100g = taken(readCell(reader_.fields()[where.index], where, mapping_));
        if (!per100g) return;
        NewValue value;
        value.component = components_[column];
        value.per100g = *per100g;
        // Each component has one column, so none comes twice.
        static_cast<void>(writer_.value(food, value));
        if (!where.component) ++run_.report.unnamedComponents[mapping_.others[where.other].tagname];
    }

    /// The value, or nothing; what is wrong with a cell is reported at its row.
    std::optional<double> taken(const Result<std::optional<double>>& cell) {
        if (cell) return *cell;
        Error error = cell.error();
        error.file = reader_.file();
        error.line = reader_.line();
        run_.reject(std::move(error));
        return std::nullopt;
    }

    const CsvMapping& mapping_;
    CsvReader& reader_;
    ImportRun& run_;
    TableWriter& writer_;
    CsvColumns columns_;
    std::vector<int> components_;  ///< of columns_.values
};

/// The mapping, if it is a whole one. A unit that is left open is asked for by the column's name,
/// not by a pointer.
Result<CsvMapping> checkedMapping(const ImportRequest& request) {
    if (!request.mapping) return fail(ErrorCode::CsvMappingNeeded);
    for (const MappedComponent& mapped : request.mapping->components)
        if (mapped.unit.empty())
            return fail(Error{ErrorCode::CsvUnitMissing}
                            .with("column", mapped.column)
                            .with("component", factsOf(mapped.component).name));
    return readCsvMapping(csvMappingJson(*request.mapping));
}

}  // namespace

Result<ImportReport> importCsv(const ImportRequest& request, const TellImport& tell) {
    const auto mapping = checkedMapping(request);
    if (!mapping) return fail(mapping.error());
    const auto files = ImportFiles::open(request.path);
    if (!files) return fail(files.error());
    const std::vector<std::string> names = files->names();
    if (names.size() != 1) {
        Error error{ErrorCode::CsvOneFile};
        error.file = request.path;
        return fail(error);
    }
    auto stream = files->read(names.front());
    if (!stream) return fail(stream.error());
    const TableTarget target{mapping->table, mapping->release, mapping->citation, request.folder,
                             request.dryRun};
    auto writer = TableWriter::begin(target);
    if (!writer) return fail(writer.error());
    ImportRun run{request, tell, files->size(names.front())};
    run.begins(names.front());
    CsvReader reader{bytesOfStream(**stream), names.front(), mapping->separator};
    if (const auto read = CsvImport{*mapping, reader, run, *writer}.readAll(); !read)
        return fail(read.error());
    run.ends(reader.bytesRead());
    writer->input(names.front(), (*stream)->sha256());
    writer->input("mapping", sha256(writeJson(csvMappingJson(*mapping))));
    return run.finish(*writer, target);
}

}  // namespace nettare
