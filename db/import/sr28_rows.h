#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/import/import_files.h"
#include "db/import/import_lines.h"
#include "db/import/import_run.h"

namespace nettare {

/// One file of the ASCII form of the Standard Reference: a record a line, fields between carets,
/// texts between tildes, in Windows-1252. Rows that cannot be read are reported and passed over.
class Sr28Rows {
public:
    /// Fails: as ImportFiles::read().
    [[nodiscard]] static Result<Sr28Rows> open(const ImportFiles& files, std::string_view name,
                                               std::size_t fields, ImportRun& run);

    /// The next row that has all its fields; false at the end. Fails: ImportStopped, NotPublished
    /// (the file is empty, or its first row is none of this file's), and as ImportStream::next().
    [[nodiscard]] Result<bool> next();

    /// A field of the row as it is written, without tildes.
    [[nodiscard]] std::string_view raw(std::size_t field) const { return fields_[field]; }

    // A field that cannot be read so gives nothing or 0, and refused() then tells why.

    /// As UTF-8.
    [[nodiscard]] std::string text(std::size_t field);
    [[nodiscard]] std::string requiredText(std::size_t field);
    /// Nothing where it is empty; never below zero.
    [[nodiscard]] std::optional<double> number(std::size_t field);
    [[nodiscard]] double requiredNumber(std::size_t field);
    /// Whole; 0 where it is empty.
    [[nodiscard]] int count(std::size_t field);

    /// Notes that the row is not taken: `found` stands there, `wanted` should.
    void refuse(std::string_view found, std::string_view wanted);
    /// The same for another reason.
    void refuse(ErrorCode code, std::string_view found);
    /// True where a field of the row was refused; the row is then reported.
    [[nodiscard]] bool refused();

    /// The same error at the row.
    [[nodiscard]] Error at(Error error) const;
    /// What the file's bytes hash to; call it at the end.
    [[nodiscard]] std::string sha256() { return stream_->sha256(); }

private:
    Sr28Rows(std::unique_ptr<ImportStream> stream, std::string_view name, std::size_t fields,
             ImportRun& run);
    /// False where the line has other fields.
    [[nodiscard]] bool takeApart(std::string_view line);
    [[nodiscard]] Error errorHere(ErrorCode code) const;

    std::unique_ptr<ImportStream> stream_;
    std::unique_ptr<ImportLines> lines_;
    std::string name_;
    std::vector<std::string_view> fields_;
    std::size_t found_ = 0;
    ImportRun* run_;
    std::optional<Error> refusal_;
};

}  // namespace nettare
