#include "db/import/import_run.h"

namespace nettare {

namespace {

/// Bytes between two tellings: some ten a second.
constexpr std::size_t kBytesBetween = std::size_t{1} << 20U;

}  // namespace

ImportRun::ImportRun(const ImportRequest& request, const TellImport& tell, std::size_t bytesInAll)
    : kind_{request.kind}, tell_{tell}, bytesInAll_{bytesInAll} {}

void ImportRun::reject(Error reason) {
    ++report.rejected;
    if (kind_ == ImportKind::Csv || report.rejectedRows.size() < kMostRejectedRows)
        report.rejectedRows.push_back({std::move(reason)});
}

void ImportRun::begins(std::string_view file) {
    file_ = file;
    nextTell_ = 0;
}

Result<void> ImportRun::isAt(std::size_t bytesOfFile) {
    if (bytesOfFile < nextTell_) return {};
    nextTell_ = bytesOfFile + kBytesBetween;
    if (!goesOn(bytesOfFile)) return fail(ErrorCode::ImportStopped);
    return {};
}

void ImportRun::ends(std::size_t bytesOfFile) {
    bytesBefore_ += bytesOfFile;
    file_.clear();
}

bool ImportRun::goesOn(std::size_t bytesOfFile) {
    return !tell_ ||
           tell_(
               {.file = file_, .bytesDone = bytesBefore_ + bytesOfFile, .bytesInAll = bytesInAll_});
}

Result<ImportReport> ImportRun::finish(TableWriter& writer, const TableTarget& target) {
    file_.clear();
    if (!goesOn(0)) return fail(ErrorCode::ImportStopped);
    const auto put = writer.finish([this] { return goesOn(0); });
    if (!put) return fail(put.error());
    report.table = target.table;
    report.release = target.release;
    report.citation = target.citation;
    report.path = writer.path();
    report.written = *put == TablePut::Written;
    report.unchanged = *put == TablePut::Unchanged;
    report.foods = writer.rows().foods;
    report.values = writer.rows().values;
    report.measures = writer.rows().measures;
    return report;
}

}  // namespace nettare
