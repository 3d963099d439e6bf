#pragma once

#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/support/result.h"
#include "db/import/csv_mapping.h"

namespace nettare {

/// What kind of files an import reads.
enum class ImportKind {
    Sr28,  ///< USDA National Nutrient Database for Standard Reference, ASCII files
    Fdc,   ///< USDA FoodData Central, CSV download
    Csv,   ///< any CSV, by a mapping of its columns
};

/// What is imported, and how.
struct ImportRequest {
    ImportKind kind = ImportKind::Sr28;
    std::string path;                   ///< a zip or a folder for Sr28 and Fdc, a file for Csv
    std::string folder;                 ///< where the table file goes, made where it is absent
    bool dryRun = false;                ///< reads and reports all, writes nothing
    std::optional<CsvMapping> mapping;  ///< for Csv
};

/// How far an import is.
struct ImportProgress {
    std::string_view file;  ///< that is read now: "NUT_DATA.txt"; empty while the table is written
    std::size_t bytesDone = 0;
    std::size_t bytesInAll = 0;
};

/// Told every few thousand rows; answers false to stop the import.
using TellImport = std::function<bool(const ImportProgress&)>;

/// A row that was not taken, and why.
struct RejectedRow {
    Error reason;  ///< with file and line
};

/// What an import did, or would do.
struct ImportReport {
    std::string table, release, citation;
    std::string path;        ///< of the table file
    bool written = false;    ///< false for a dry run, and where the same content was there already
    bool unchanged = false;  ///< the file was there with the same content
    std::size_t foods = 0, values = 0, measures = 0;
    /// Values in a component that the program has no tagname for, by the publisher's number; they
    /// are stored under it.
    std::map<std::string, std::size_t> unnamedComponents;
    /// Values of nutrient numbers that the publisher's own list does not have; not stored.
    std::map<std::string, std::size_t> unknownComponents;
    /// Foods left out on purpose, by the publisher's word for their kind: samples behind the
    /// published foods, and what is known for 100 ml only.
    std::map<std::string, std::size_t> leftOut;
    std::size_t rejected = 0;               ///< all of them
    std::vector<RejectedRow> rejectedRows;  ///< all for Csv; the first kMostRejectedRows else
};

inline constexpr std::size_t kMostRejectedRows = 1000;

/// Makes a table file of public data. All or nothing: a file of the same table is replaced in one
/// step, and stays where anything fails or the import is stopped; the same input gives the same
/// bytes. A row that cannot be read is reported and left out. Fails: ImportStopped, and with file
/// and line where the files are not what they should be.
[[nodiscard]] Result<ImportReport> importTable(const ImportRequest& request,
                                               const TellImport& tell = {});

}  // namespace nettare
