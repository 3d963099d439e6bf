#include "db/import/import_files.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <system_error>

#include "core/support/text.h"
#include "db/import/zip_archive.h"
#include "db/sqlite_errors.h"

namespace nettare {

namespace {

constexpr std::size_t kBytesOfStream = std::size_t{1} << 18U;

Error notReadable(const std::string& path, const std::string& reason) {
    return errorIn(path, ErrorCode::FileNotReadable).with("reason", reason);
}

/// A file in a folder.
class PlainStream : public ImportStream {
public:
    explicit PlainStream(const std::string& path) : path_{path}, stream_{path, std::ios::binary} {}

    [[nodiscard]] bool isOpen() const { return stream_.is_open(); }

protected:
    Result<std::size_t> fill(char* buffer, std::size_t size) override {
        stream_.read(buffer, static_cast<std::streamsize>(size));
        if (stream_.bad()) return fail(notReadable(path_, "the disk answers with an error"));
        return static_cast<std::size_t>(stream_.gcount());
    }

private:
    std::string path_;
    std::ifstream stream_;
};

bool startsLikeZip(const std::string& path) {
    std::ifstream stream{path, std::ios::binary};
    std::string start(2, '\0');
    return stream.read(start.data(), 2) && start == "PK";
}

}  // namespace

Result<std::string_view> ImportStream::next() {
    buffer_.resize(kBytesOfStream);
    const auto filled = fill(buffer_.data(), buffer_.size());
    if (!filled) return fail(filled.error());
    const std::string_view bytes{buffer_.data(), *filled};
    hash_.add(bytes);
    bytesRead_ += bytes.size();
    return bytes;
}

struct ImportFiles::Content {
    /// Where a file of the download is.
    struct Entry {
        std::string name;  ///< as it is written there
        std::string path;  ///< empty in a zip
        std::size_t place = 0;
        std::size_t size = 0;
    };

    void add(const Entry& entry) { entries.try_emplace(lowerAscii(entry.name), entry); }
    void addFile(const std::filesystem::path& file) {
        std::error_code unread;
        if (!std::filesystem::is_regular_file(file, unread)) return;
        const auto size = std::filesystem::file_size(file, unread);
        add({.name = file.filename().string(),
             .path = file.string(),
             .place = 0,
             .size = unread ? 0 : static_cast<std::size_t>(size)});
    }
    [[nodiscard]] const Entry* find(std::string_view name) const {
        const auto found = entries.find(lowerAscii(name));
        return found == entries.end() ? nullptr : &found->second;
    }

    std::string path;
    std::optional<ZipArchive> zip;
    std::map<std::string, Entry> entries;
};

ImportFiles::ImportFiles(std::unique_ptr<Content> content) : content_{std::move(content)} {}
ImportFiles::ImportFiles(ImportFiles&&) noexcept = default;
ImportFiles& ImportFiles::operator=(ImportFiles&&) noexcept = default;
ImportFiles::~ImportFiles() = default;

Result<ImportFiles> ImportFiles::open(const std::string& path) {
    auto content = std::make_unique<Content>();
    content->path = path;
    std::error_code unread;
    if (std::filesystem::is_directory(path, unread)) {
        for (std::filesystem::directory_iterator at{path, unread}, end; !unread && at != end;
             at.increment(unread))
            content->addFile(at->path());
        if (unread) return fail(notReadable(path, unread.message()));
        return ImportFiles{std::move(content)};
    }
    if (!std::filesystem::is_regular_file(path, unread))
        return fail(notReadable(path, unread ? unread.message() : "it is no file and no folder"));
    if (!std::ifstream{path}) return fail(notReadable(path, "no right to read it"));
    if (!startsLikeZip(path) && !lowerAscii(path).ends_with(".zip")) {
        content->addFile(path);
        return ImportFiles{std::move(content)};
    }
    auto zip = ZipArchive::open(path);
    if (!zip) return fail(zip.error());
    for (const ZipEntry& entry : zip->entries())
        content->add({.name = entry.name, .path = {}, .place = entry.place, .size = entry.size});
    content->zip = std::move(*zip);
    return ImportFiles{std::move(content)};
}

const std::string& ImportFiles::path() const {
    return content_->path;
}

std::vector<std::string> ImportFiles::names() const {
    std::vector<std::string> names;
    for (const auto& [key, entry] : content_->entries) names.push_back(entry.name);
    std::ranges::sort(names);
    return names;
}

bool ImportFiles::has(std::string_view name) const {
    return content_->find(name) != nullptr;
}

std::size_t ImportFiles::size(std::string_view name) const {
    const Content::Entry* entry = content_->find(name);
    return entry == nullptr ? 0 : entry->size;
}

Result<std::unique_ptr<ImportStream>> ImportFiles::read(std::string_view name) const {
    const Content::Entry* entry = content_->find(name);
    if (entry == nullptr)
        return fail(errorIn(path(), ErrorCode::ImportFileMissing).with("found", name));
    if (content_->zip) return content_->zip->read(entry->place);
    auto stream = std::make_unique<PlainStream>(entry->path);
    if (!stream->isOpen()) return fail(notReadable(entry->path, "no right to read it"));
    return std::unique_ptr<ImportStream>{std::move(stream)};
}

}  // namespace nettare
