#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/support/result.h"
#include "core/support/sha256.h"

namespace nettare {

/// The bytes of one file from its start to its end, with what was read so far.
class ImportStream {
public:
    ImportStream() = default;
    ImportStream(const ImportStream&) = delete;
    ImportStream& operator=(const ImportStream&) = delete;
    virtual ~ImportStream() = default;

    /// The next bytes, at most a few hundred kB; empty at the end. They are good until the next
    /// call. Fails: FileNotReadable, ZipDamaged.
    [[nodiscard]] Result<std::string_view> next();
    [[nodiscard]] std::size_t bytesRead() const { return bytesRead_; }
    /// Of all bytes read so far; call it at the end.
    [[nodiscard]] std::string sha256() { return hash_.hex(); }

protected:
    /// Fills the buffer; 0 at the end.
    [[nodiscard]] virtual Result<std::size_t> fill(char* buffer, std::size_t size) = 0;

private:
    std::vector<char> buffer_;
    std::size_t bytesRead_ = 0;
    Sha256 hash_;
};

/// The files of a download: a zip, a folder, or one file. Files are named without their folders;
/// case does not matter.
class ImportFiles {
public:
    /// Fails: FileNotReadable, ZipDamaged (a zip that is cut off or no zip inside).
    [[nodiscard]] static Result<ImportFiles> open(const std::string& path);

    ImportFiles(ImportFiles&&) noexcept;
    ImportFiles& operator=(ImportFiles&&) noexcept;
    ~ImportFiles();

    [[nodiscard]] const std::string& path() const;
    [[nodiscard]] std::vector<std::string> names() const;  ///< sorted
    [[nodiscard]] bool has(std::string_view name) const;
    /// Bytes of a file as it is read; 0 where there is none.
    [[nodiscard]] std::size_t size(std::string_view name) const;
    /// One stream at a time. Fails: FileNotReadable, ZipDamaged, ImportFileMissing (value "found").
    [[nodiscard]] Result<std::unique_ptr<ImportStream>> read(std::string_view name) const;

private:
    struct Content;
    explicit ImportFiles(std::unique_ptr<Content> content);

    std::unique_ptr<Content> content_;
};

}  // namespace nettare
