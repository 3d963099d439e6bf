#include "db/kitchen/file_header.h"

#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>

#include <array>
#include <cstddef>
#include <memory>
#include <string_view>

namespace nettare {

namespace {

using namespace std::string_view_literals;

constexpr auto kMagic = "SQLite format 3\0"sv;
constexpr std::size_t kUserVersionAt = 60, kApplicationIdAt = 68;

/// A file as SQLite's default file system opens it.
class OpenFile {
public:
    explicit OpenFile(const std::string& path)
        // A name is followed by further zeros, where SQLite would look for parameters.
        : name_{path + std::string(2, '\0')}, memory_{new std::max_align_t[room()]} {
        if (const int answer = system_->xOpen(system_, name_.c_str(), file(),
                                              SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB, nullptr);
            answer != SQLITE_OK)
            throw SQLite::Exception{"the file cannot be opened", answer};
    }
    ~OpenFile() { file()->pMethods->xClose(file()); }
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;

    /// Bytes behind the end of the file are zeros.
    template <std::size_t N>
    void read(std::array<unsigned char, N>& bytes) {
        const int answer = file()->pMethods->xRead(file(), bytes.data(), static_cast<int>(N), 0);
        if (answer != SQLITE_OK && answer != SQLITE_IOERR_SHORT_READ)
            throw SQLite::Exception{"the file cannot be read", answer};
    }

private:
    [[nodiscard]] std::size_t room() const {
        return static_cast<std::size_t>(system_->szOsFile) / sizeof(std::max_align_t) + 1;
    }
    [[nodiscard]] sqlite3_file* file() { return reinterpret_cast<sqlite3_file*>(memory_.get()); }

    sqlite3_vfs* system_ = sqlite3_vfs_find(nullptr);
    std::string name_;
    std::unique_ptr<std::max_align_t[]> memory_;
};

/// Big end first.
int numberAt(const std::array<unsigned char, 100>& bytes, std::size_t at) {
    unsigned number = 0;
    for (std::size_t i = 0; i < 4; ++i) number = number << 8U | bytes[at + i];
    return static_cast<int>(number);
}

}  // namespace

FileHeader readFileHeader(const std::string& path) {
    std::array<unsigned char, 100> bytes{};
    OpenFile{path}.read(bytes);
    for (std::size_t i = 0; i < kMagic.size(); ++i)
        if (bytes[i] != static_cast<unsigned char>(kMagic[i])) return {};
    return {true, numberAt(bytes, kApplicationIdAt), numberAt(bytes, kUserVersionAt)};
}

}  // namespace nettare
