#include "db/kitchen/hold.h"

#include <fcntl.h>
#include <pwd.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <chrono>
#include <thread>
#include <utility>

namespace nettare {

namespace {

constexpr int kAttempts = 10;
constexpr std::chrono::milliseconds kPause{20};

std::string userName() {
    passwd entry{};
    passwd* found = nullptr;
    std::array<char, 4096> room{};
    getpwuid_r(geteuid(), &entry, room.data(), room.size(), &found);
    return found != nullptr ? std::string{found->pw_name} : "user " + std::to_string(geteuid());
}

std::string hostName() {
    std::array<char, 256> name{};
    return gethostname(name.data(), name.size() - 1) == 0 ? std::string{name.data()} : "this host";
}

std::string ownName() {
    return userName() + " on " + hostName() + ", process " + std::to_string(getpid());
}

/// What the holder wrote; it ends with a line feed once it is whole.
std::string nameIn(int descriptor) {
    std::array<char, 1024> text{};
    for (int i = 0; i < kAttempts; ++i) {
        const ssize_t size = pread(descriptor, text.data(), text.size(), 0);
        if (size > 0 && text[static_cast<std::size_t>(size) - 1] == '\n')
            return {text.data(), static_cast<std::size_t>(size) - 1};
        std::this_thread::sleep_for(kPause);
    }
    return "another window";
}

void writeName(int descriptor) {
    const std::string text = ownName() + "\n";
    // The lock is what counts; a name that cannot be written is shown as "another window".
    if (ftruncate(descriptor, 0) != 0 ||
        pwrite(descriptor, text.data(), text.size(), 0) != static_cast<ssize_t>(text.size()))
        static_cast<void>(ftruncate(descriptor, 0));
}

/// Whether the name still leads to this very file: a holder before may have removed it.
bool standsAt(const std::string& file, int descriptor) {
    struct stat named {};
    struct stat opened {};
    return ::stat(file.c_str(), &named) == 0 && ::fstat(descriptor, &opened) == 0 &&
           named.st_dev == opened.st_dev && named.st_ino == opened.st_ino;
}

struct Opened {
    int descriptor = -1;
    bool ours = false;  ///< may be written
};

/// Through no link, which could lead to somebody's work, and without waiting at a pipe.
int openPlain(const std::string& file, int how) {
    constexpr mode_t kReadableByAll = 0644;
    const int descriptor =
        ::open(file.c_str(), how | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK, kReadableByAll);
    struct stat opened {};
    if (descriptor < 0 || (::fstat(descriptor, &opened) == 0 && S_ISREG(opened.st_mode)))
        return descriptor;
    ::close(descriptor);
    return -1;
}

/// A file that a killed process of another user left may be readable only.
Opened openHeld(const std::string& file) {
    const int writable = openPlain(file, O_RDWR | O_CREAT);
    if (writable >= 0) return {writable, true};
    return {openPlain(file, O_RDONLY), false};
}

}  // namespace

Hold::Hold(Hold&& other) noexcept
    : file_{std::move(other.file_)}, descriptor_{std::exchange(other.descriptor_, -1)} {}

Hold& Hold::operator=(Hold&& other) noexcept {
    release();
    file_ = std::move(other.file_);
    descriptor_ = std::exchange(other.descriptor_, -1);
    return *this;
}

Hold::~Hold() {
    release();
}

void Hold::release() {
    if (descriptor_ < 0) return;
    ::unlink(file_.c_str());
    ::close(descriptor_);
    descriptor_ = -1;
}

HoldAttempt takeHold(const std::string& kitchen) {
    const std::string file = kitchen + ".held";
    for (int i = 0; i < kAttempts; ++i) {
        const auto [descriptor, ours] = openHeld(file);
        if (descriptor < 0) return {};
        Hold hold{file, descriptor};
        if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
            HoldAttempt held{std::nullopt, errno == EWOULDBLOCK ? nameIn(descriptor) : ""};
            hold.descriptor_ = -1;
            ::close(descriptor);
            return held;
        }
        if (!standsAt(file, descriptor)) {
            hold.descriptor_ = -1;
            ::close(descriptor);
            continue;
        }
        if (!ours) continue;  // nobody holds it: releasing it removes it
        writeName(descriptor);
        return {std::move(hold), {}};
    }
    return {};
}

}  // namespace nettare
