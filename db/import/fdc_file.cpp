#include "db/import/fdc_file.h"

#include <algorithm>
#include <charconv>

#include "core/support/text.h"
#include "db/import/csv_stream.h"

namespace nettare {

namespace {

std::string headerList(const std::vector<std::string_view>& headers) {
    std::string all;
    for (const std::string_view header : headers) {
        if (!all.empty()) all += ", ";
        all += header;
    }
    return all;
}

}  // namespace

Result<FdcFile> FdcFile::open(const ImportFiles& files, std::string_view name,
                              std::span<const FdcColumn> columns, ImportRun& run) {
    auto stream = files.read(name);
    if (!stream) return fail(stream.error());
    FdcFile file;
    file.stream_ = std::move(*stream);
    file.reader_ =
        std::make_unique<CsvReader>(bytesOfStream(*file.stream_), std::string{name}, ',');
    file.run_ = &run;
    run.begins(name);
    if (auto header = file.readHeader(columns); !header) return fail(header.error());
    return file;
}

Result<void> FdcFile::readHeader(std::span<const FdcColumn> columns) {
    const auto there = reader_->next();
    if (!there) return fail(there.error());
    if (!*there) return fail(errorHere(ErrorCode::CsvNoHeader));
    if (const auto fault = reader_->fault()) return fail(errorHere(*fault));
    const std::vector<std::string_view>& headers = reader_->fields();
    width_ = headers.size();
    for (const FdcColumn& column : columns) {
        const auto found = std::ranges::find_if(
            headers, [&](std::string_view header) { return trimmed(header) == column.name; });
        if (found != headers.end()) {
            places_.emplace_back(static_cast<std::size_t>(found - headers.begin()));
            continue;
        }
        places_.emplace_back();
        if (!column.needed) continue;
        Error error = errorHere(ErrorCode::CsvColumnMissing).with("column", column.name);
        error.values.push_back({"known", headerList(headers)});
        return fail(error);
    }
    return {};
}

Result<bool> FdcFile::next() {
    while (true) {
        const auto there = reader_->next();
        if (!there) return fail(there.error());
        if (!*there) {
            run_->ends(reader_->bytesRead());
            return false;
        }
        if (auto goesOn = run_->isAt(reader_->bytesRead()); !goesOn) return fail(goesOn.error());
        if (const auto fault = reader_->fault())
            reject(errorHere(*fault));
        else if (reader_->fields().size() != width_)
            reject(errorHere(ErrorCode::FieldsDiffer)
                       .with("found", std::to_string(reader_->fields().size()))
                       .with("known", std::to_string(width_)));
        else
            return true;
    }
}

std::optional<std::uint32_t> fdcId(std::string_view text) {
    std::uint32_t id = 0;
    const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), id);
    const bool whole = failed == std::errc{} && end == text.data() + text.size();
    return whole ? std::optional{id} : std::nullopt;
}

}  // namespace nettare
