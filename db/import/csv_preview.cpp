#include "db/import/csv_mapping.h"
#include "db/import/csv_reader.h"

namespace nettare {

Result<std::vector<std::vector<std::string>>> csvPreview(const std::string& path, char separator,
                                                         int rows) {
    auto bytes = bytesOfFile(path);
    if (!bytes) return fail(bytes.error());
    CsvReader reader{std::move(*bytes), path, separator};
    std::vector<std::vector<std::string>> preview;
    while (preview.size() <= static_cast<std::size_t>(rows)) {
        const auto there = reader.next();
        if (!there) return fail(there.error());
        if (!*there) break;
        if (const auto fault = reader.fault()) {
            if (preview.empty()) return fail(reader.errorHere(*fault));
            continue;
        }
        preview.emplace_back(reader.fields().begin(), reader.fields().end());
    }
    if (preview.empty()) {
        Error error{ErrorCode::CsvNoHeader};
        error.file = path;
        return fail(error);
    }
    return preview;
}

}  // namespace nettare
