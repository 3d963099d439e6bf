#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "db/import/import_table.h"
#include "db/import/table_writer.h"

namespace nettare {

/// One import under way: its report, and whom it tells how far it is.
class ImportRun {
public:
    /// `bytesInAll` is what all files together hold.
    ImportRun(const ImportRequest& request, const TellImport& tell, std::size_t bytesInAll);

    ImportReport report;

    /// A row that is left out; `reason` names file and line.
    void reject(Error reason);
    /// A file is read from now on.
    void begins(std::string_view file);
    /// So many bytes of it are read; call it as often as you like. Fails: ImportStopped.
    [[nodiscard]] Result<void> isAt(std::size_t bytesOfFile);
    /// Its last byte is read.
    void ends(std::size_t bytesOfFile);

    /// Finishes the writer and fills the report's table, path, counts and outcome.
    /// Fails: as TableWriter::finish().
    [[nodiscard]] Result<ImportReport> finish(TableWriter& writer, const TableTarget& target);

private:
    [[nodiscard]] bool goesOn(std::size_t bytesOfFile);

    ImportKind kind_;
    TellImport tell_;
    std::size_t bytesInAll_, bytesBefore_ = 0, nextTell_ = 0;
    std::string file_;
};

}  // namespace nettare
