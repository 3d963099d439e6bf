#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <vector>

#include "core/support/result.h"
#include "db/import/import_files.h"

namespace nettare {

/// A file in a zip.
struct ZipEntry {
    std::string name;  ///< without its folders
    std::size_t place = 0;
    std::size_t size = 0;  ///< unpacked, in bytes
};

/// A zip to read from.
class ZipArchive {
public:
    /// Fails: ZipDamaged (value "reason"), FileNotReadable.
    [[nodiscard]] static Result<ZipArchive> open(const std::string& path);

    /// Its files, no folders.
    [[nodiscard]] const std::vector<ZipEntry>& entries() const { return entries_; }
    /// Unpacks one of them; the archive must live longer. Fails: ZipDamaged.
    [[nodiscard]] Result<std::unique_ptr<ImportStream>> read(std::size_t place) const;

private:
    struct Handle;

    std::string path_;
    std::shared_ptr<Handle> handle_;
    std::vector<ZipEntry> entries_;
};

}  // namespace nettare
