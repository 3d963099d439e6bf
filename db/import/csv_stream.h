#pragma once

#include "db/import/csv_reader.h"
#include "db/import/import_files.h"

namespace nettare {

/// The bytes of a stream, for a CsvReader that the stream outlives.
[[nodiscard]] ReadBytes bytesOfStream(ImportStream& stream);

}  // namespace nettare
