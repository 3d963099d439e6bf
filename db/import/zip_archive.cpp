#include "db/import/zip_archive.h"

#include <zip.h>

#include "db/sqlite_errors.h"

namespace nettare {

namespace {

struct CloseFile {
    void operator()(zip_file_t* file) const { zip_fclose(file); }
};

Error zipDamaged(const std::string& path, const std::string& reason) {
    return errorIn(path, ErrorCode::ZipDamaged).with("reason", reason);
}

/// Unpacks one file of a zip. At its end the sum of its bytes is compared with the zip's.
class ZipStream : public ImportStream {
public:
    ZipStream(std::string path, zip_file_t* file) : path_{std::move(path)}, file_{file} {}

protected:
    Result<std::size_t> fill(char* buffer, std::size_t size) override {
        const zip_int64_t read = zip_fread(file_.get(), buffer, size);
        if (read < 0) return fail(zipDamaged(path_, zip_file_strerror(file_.get())));
        return static_cast<std::size_t>(read);
    }

private:
    std::string path_;
    std::unique_ptr<zip_file_t, CloseFile> file_;
};

std::string withoutFolders(const std::string& name) {
    return name.substr(name.find_last_of('/') + 1);
}

}  // namespace

struct ZipArchive::Handle {
    explicit Handle(zip_t* opened) : zip{opened} {}
    Handle(const Handle&) = delete;
    Handle& operator=(const Handle&) = delete;
    ~Handle() { zip_discard(zip); }

    zip_t* zip;
};

Result<ZipArchive> ZipArchive::open(const std::string& path) {
    int code = 0;
    zip_t* opened = zip_open(path.c_str(), ZIP_RDONLY | ZIP_CHECKCONS, &code);
    if (opened == nullptr) {
        zip_error_t cause;
        zip_error_init_with_code(&cause, code);
        const Error error = zipDamaged(path, zip_error_strerror(&cause));
        zip_error_fini(&cause);
        return fail(error);
    }
    ZipArchive archive;
    archive.path_ = path;
    archive.handle_ = std::make_shared<Handle>(opened);
    const zip_int64_t count = zip_get_num_entries(opened, 0);
    for (zip_int64_t i = 0; i < count; ++i) {
        zip_stat_t facts;
        if (zip_stat_index(opened, static_cast<zip_uint64_t>(i), 0, &facts) != 0) continue;
        const std::string name = withoutFolders(facts.name);
        if (name.empty()) continue;
        archive.entries_.push_back({.name = name,
                                    .place = static_cast<std::size_t>(i),
                                    .size = static_cast<std::size_t>(facts.size)});
    }
    return archive;
}

Result<std::unique_ptr<ImportStream>> ZipArchive::read(std::size_t place) const {
    zip_file_t* file = zip_fopen_index(handle_->zip, place, 0);
    if (file == nullptr) return fail(zipDamaged(path_, zip_strerror(handle_->zip)));
    return std::unique_ptr<ImportStream>{std::make_unique<ZipStream>(path_, file)};
}

}  // namespace nettare
