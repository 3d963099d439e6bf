#pragma once

#include <string>

#include "core/support/result.h"

namespace nettare {

/// A file that appears whole or not at all: it is written under another name beside its own, synced
/// to the disk and renamed. Until then, and if that fails, an older file of the name stays as it
/// was.
class WholeFile {
public:
    /// Clears what a broken run may have left beside the name.
    explicit WholeFile(std::string path);
    /// Removes what was written, unless it was put in place.
    ~WholeFile();
    WholeFile(const WholeFile&) = delete;
    WholeFile& operator=(const WholeFile&) = delete;

    /// Where to write.
    [[nodiscard]] const std::string& partialPath() const { return partial_; }
    /// Fails: FileNotWritable (value "reason").
    [[nodiscard]] Result<void> putInPlace();

private:
    std::string path_;
    std::string partial_;
    bool inPlace_ = false;
};

}  // namespace nettare
