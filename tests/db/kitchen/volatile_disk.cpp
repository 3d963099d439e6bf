#include "volatile_disk.h"

#include <sqlite3.h>

#include <catch2/catch.hpp>
#include <cstring>
#include <map>
#include <new>
#include <optional>
#include <random>
#include <string>
#include <vector>

/// One write that was not synced yet; without bytes it cuts the file there.
struct VolatileWrite {
    sqlite3_int64 offset = 0;
    std::optional<std::string> bytes;
};

/// A file as whoever reads it sees it, and what of that is not on the disk.
struct VolatileFile {
    std::string content;
    std::vector<VolatileWrite> unsynced;
    int handles = 0;
};

struct VolatileDisk::State {
    sqlite3_vfs vfs{};
    sqlite3_vfs* base = nullptr;
    std::map<std::string, VolatileFile> files;
    int syncs = 0, writes = 0;
    int cutAt = 0, cutAtWrite = 0;  ///< 0: never
    int writesLeft = -1;
    bool off = false;
    std::optional<std::mt19937> coin;
};

namespace {

using State = VolatileDisk::State;

/// What SQLite holds of an open file; the file of the system lies behind it.
struct ShimFile {
    sqlite3_file file;
    State* disk;
    VolatileFile* content;
    sqlite3_file* real;
};

ShimFile* shimOf(sqlite3_file* file) {
    return reinterpret_cast<ShimFile*>(file);
}

void take(std::string& content, const VolatileWrite& change) {
    const auto offset = static_cast<std::size_t>(change.offset);
    if (!change.bytes) {
        content.resize(offset);
        return;
    }
    if (content.size() < offset + change.bytes->size())
        content.resize(offset + change.bytes->size());
    content.replace(offset, change.bytes->size(), *change.bytes);
}

void bringToDisk(sqlite3_file* real, const VolatileWrite& change) {
    if (!change.bytes)
        real->pMethods->xTruncate(real, change.offset);
    else
        real->pMethods->xWrite(real, change.bytes->data(), static_cast<int>(change.bytes->size()),
                               change.offset);
}

/// Through the file that asked for the sync alone; the coin is tossed for that one.
void cutPower(State& disk, ShimFile& asking) {
    disk.off = true;
    if (disk.coin)
        for (const VolatileWrite& change : asking.content->unsynced)
            if (((*disk.coin)() & 1U) != 0) bringToDisk(asking.real, change);
    for (auto& [path, file] : disk.files) file.unsynced.clear();
}

int closeFile(sqlite3_file* file) {
    ShimFile* shim = shimOf(file);
    --shim->content->handles;
    return shim->real->pMethods->xClose(shim->real);
}

int readFile(sqlite3_file* file, void* bytes, int count, sqlite3_int64 offset) {
    const ShimFile* shim = shimOf(file);
    if (shim->disk->off) return SQLITE_IOERR_READ;
    const std::string& content = shim->content->content;
    const auto from = static_cast<std::size_t>(offset);
    const std::size_t wanted = static_cast<std::size_t>(count);
    const std::size_t there = from < content.size() ? std::min(wanted, content.size() - from) : 0;
    if (there > 0) std::memcpy(bytes, content.data() + from, there);
    std::memset(static_cast<char*>(bytes) + there, 0, wanted - there);
    return there == wanted ? SQLITE_OK : SQLITE_IOERR_SHORT_READ;
}

int change(ShimFile& shim, VolatileWrite unsynced) {
    if (shim.disk->off) return SQLITE_IOERR_WRITE;
    if (++shim.disk->writes == shim.disk->cutAtWrite) {
        cutPower(*shim.disk, shim);
        return SQLITE_IOERR_WRITE;
    }
    take(shim.content->content, unsynced);
    shim.content->unsynced.push_back(std::move(unsynced));
    return SQLITE_OK;
}

int writeFile(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset) {
    ShimFile* shim = shimOf(file);
    if (shim->disk->writesLeft == 0) return SQLITE_FULL;
    if (shim->disk->writesLeft > 0) --shim->disk->writesLeft;
    return change(*shim, {offset, std::string{static_cast<const char*>(bytes),
                                              static_cast<std::size_t>(count)}});
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    return change(*shimOf(file), {size, std::nullopt});
}

int syncFile(sqlite3_file* file, int) {
    ShimFile* shim = shimOf(file);
    State& disk = *shim->disk;
    if (disk.off) return SQLITE_IOERR_FSYNC;
    if (++disk.syncs == disk.cutAt) {
        cutPower(disk, *shim);
        return SQLITE_IOERR_FSYNC;
    }
    for (const VolatileWrite& change : shim->content->unsynced) bringToDisk(shim->real, change);
    shim->content->unsynced.clear();
    return SQLITE_OK;
}

int sizeOfFile(sqlite3_file* file, sqlite3_int64* size) {
    *size = static_cast<sqlite3_int64>(shimOf(file)->content->content.size());
    return shimOf(file)->disk->off ? SQLITE_IOERR_FSTAT : SQLITE_OK;
}

int lockFile(sqlite3_file* file, int level) {
    sqlite3_file* real = shimOf(file)->real;
    return real->pMethods->xLock(real, level);
}
int unlockFile(sqlite3_file* file, int level) {
    sqlite3_file* real = shimOf(file)->real;
    return real->pMethods->xUnlock(real, level);
}
int isReserved(sqlite3_file* file, int* answer) {
    sqlite3_file* real = shimOf(file)->real;
    return real->pMethods->xCheckReservedLock(real, answer);
}
int controlFile(sqlite3_file* file, int operation, void* argument) {
    sqlite3_file* real = shimOf(file)->real;
    return real->pMethods->xFileControl(real, operation, argument);
}
int sectorOf(sqlite3_file* file) {
    sqlite3_file* real = shimOf(file)->real;
    return real->pMethods->xSectorSize(real);
}
int traitsOf(sqlite3_file* file) {
    sqlite3_file* real = shimOf(file)->real;
    return real->pMethods->xDeviceCharacteristics(real);
}
int mapShared(sqlite3_file* file, int page, int size, int extend, void volatile** memory) {
    sqlite3_file* real = shimOf(file)->real;
    return real->pMethods->xShmMap(real, page, size, extend, memory);
}
int lockShared(sqlite3_file* file, int offset, int count, int flags) {
    sqlite3_file* real = shimOf(file)->real;
    return real->pMethods->xShmLock(real, offset, count, flags);
}
void fenceShared(sqlite3_file* file) {
    sqlite3_file* real = shimOf(file)->real;
    real->pMethods->xShmBarrier(real);
}
int unmapShared(sqlite3_file* file, int remove) {
    sqlite3_file* real = shimOf(file)->real;
    return real->pMethods->xShmUnmap(real, remove);
}

/// Version 2: with shared memory for the log's index, without pages mapped from the file.
constexpr sqlite3_io_methods kMethods{2,           closeFile,   readFile, writeFile,  truncateFile,
                                      syncFile,    sizeOfFile,  lockFile, unlockFile, isReserved,
                                      controlFile, sectorOf,    traitsOf, mapShared,  lockShared,
                                      fenceShared, unmapShared, nullptr,  nullptr};

State& diskOf(sqlite3_vfs* vfs) {
    return *static_cast<State*>(vfs->pAppData);
}

void load(VolatileFile& file, sqlite3_file* real) {
    sqlite3_int64 size = 0;
    real->pMethods->xFileSize(real, &size);
    file.content.assign(static_cast<std::size_t>(size), '\0');
    if (size > 0) real->pMethods->xRead(real, file.content.data(), static_cast<int>(size), 0);
}

int openFile(sqlite3_vfs* vfs, const char* path, sqlite3_file* file, int flags, int* outFlags) {
    State& disk = diskOf(vfs);
    constexpr int kWatched = SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_WAL | SQLITE_OPEN_MAIN_JOURNAL;
    if (path == nullptr || (flags & kWatched) == 0)
        return disk.base->xOpen(disk.base, path, file, flags, outFlags);
    file->pMethods = nullptr;
    if (disk.off) return SQLITE_CANTOPEN;
    auto* shim = shimOf(file);
    auto* real = reinterpret_cast<sqlite3_file*>(shim + 1);
    if (const int answer = disk.base->xOpen(disk.base, path, real, flags, outFlags);
        answer != SQLITE_OK)
        return answer;
    VolatileFile& content = disk.files[path];
    // Another file may have been given this name.
    if (content.handles == 0 && content.unsynced.empty()) load(content, real);
    ++content.handles;
    shim->disk = &disk;
    shim->content = &content;
    shim->real = real;
    shim->file.pMethods = &kMethods;
    return SQLITE_OK;
}

int deleteFile(sqlite3_vfs* vfs, const char* path, int syncFolder) {
    State& disk = diskOf(vfs);
    if (disk.off) return SQLITE_IOERR_DELETE;
    if (const auto found = disk.files.find(path); found != disk.files.end()) {
        found->second.content.clear();
        found->second.unsynced.clear();
    }
    return disk.base->xDelete(disk.base, path, syncFolder);
}

}  // namespace

VolatileDisk::VolatileDisk() : state_{std::make_unique<State>()} {
    state_->base = sqlite3_vfs_find(nullptr);
    state_->vfs = *state_->base;
    state_->vfs.pNext = nullptr;
    state_->vfs.zName = "volatile";
    state_->vfs.szOsFile = static_cast<int>(sizeof(ShimFile)) + state_->base->szOsFile;
    state_->vfs.pAppData = state_.get();
    state_->vfs.xOpen = openFile;
    state_->vfs.xDelete = deleteFile;
    REQUIRE(sqlite3_vfs_register(&state_->vfs, 1) == SQLITE_OK);
}

VolatileDisk::~VolatileDisk() {
    sqlite3_vfs_unregister(&state_->vfs);
    sqlite3_vfs_register(state_->base, 1);
}

void VolatileDisk::cutAtSync(int number) {
    state_->cutAt = number;
}
void VolatileDisk::cutAtWrite(int number) {
    state_->cutAtWrite = number;
}
void VolatileDisk::tossWith(std::uint32_t seed) {
    state_->coin.emplace(seed);
}
void VolatileDisk::fullAfterWrites(int number) {
    state_->writesLeft = number;
}
int VolatileDisk::syncs() const {
    return state_->syncs;
}
int VolatileDisk::writes() const {
    return state_->writes;
}
bool VolatileDisk::isOff() const {
    return state_->off;
}
