#pragma once

#include <string>

#include "core/support/result.h"

namespace nettare {

/// The folder of imported tables, held for one import at a time by a lock of the kernel: two
/// imports of one table would write into each other's file.
class ImportFolder {
public:
    /// Makes the folder where it is absent, and clears what killed imports left in it.
    /// Fails: FileNotWritable, ImportBusy.
    [[nodiscard]] static Result<ImportFolder> hold(const std::string& folder);

    ImportFolder(ImportFolder&& other) noexcept;
    ImportFolder& operator=(ImportFolder&& other) noexcept;
    ~ImportFolder();

private:
    explicit ImportFolder(int descriptor) : descriptor_{descriptor} {}

    int descriptor_ = -1;
};

}  // namespace nettare
