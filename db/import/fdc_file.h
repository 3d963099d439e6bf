#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "db/import/csv_reader.h"
#include "db/import/import_files.h"
#include "db/import/import_run.h"

namespace nettare {

/// A column of a file of the download, found by its header.
struct FdcColumn {
    std::string_view name;
    bool needed = true;
};

/// One file of a FoodData Central download, read row by row. Its columns may stand in any order,
/// and others beside them. Rows that cannot be read are reported and passed over.
class FdcFile {
public:
    /// `columns` are asked for by their place in this list. Fails: as ImportFiles::read(),
    /// CsvNoHeader, CsvColumnMissing.
    [[nodiscard]] static Result<FdcFile> open(const ImportFiles& files, std::string_view name,
                                              std::span<const FdcColumn> columns, ImportRun& run);

    /// The next row; false at the end, of which the run is told. Fails: ImportStopped, and as
    /// CsvReader::next().
    [[nodiscard]] Result<bool> next();
    /// The field of a column of the row; empty where the file has no such column.
    [[nodiscard]] std::string_view operator[](std::size_t column) const {
        return places_[column] ? reader_->fields()[*places_[column]] : std::string_view{};
    }
    /// An error at the row.
    [[nodiscard]] Error errorHere(ErrorCode code) const { return reader_->errorHere(code); }
    /// Reports the row, or a cell of it, as left out.
    void reject(Error reason) { run_->reject(std::move(reason)); }
    /// Of the whole file, once it is read.
    [[nodiscard]] std::string sha256() { return stream_->sha256(); }

private:
    FdcFile() = default;
    [[nodiscard]] Result<void> readHeader(std::span<const FdcColumn> columns);

    std::unique_ptr<ImportStream> stream_;
    std::unique_ptr<CsvReader> reader_;
    ImportRun* run_ = nullptr;
    std::vector<std::optional<std::size_t>> places_;
    std::size_t width_ = 0;
};

/// A whole number from 0 on, as ids are; nothing for any other text.
[[nodiscard]] std::optional<std::uint32_t> fdcId(std::string_view text);

}  // namespace nettare
