#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include <unistd.h>

namespace nettare {

/// An empty folder that any user may write in, for one test; gone at its end.
class ScratchFolder {
public:
    explicit ScratchFolder(const std::string& name)
        : root_{std::filesystem::temp_directory_path() /
                ("nettare-" + name + "-" + std::to_string(getpid()))} {
        std::filesystem::remove_all(root_);
        std::filesystem::create_directories(root_);
        std::filesystem::permissions(root_, std::filesystem::perms::all);
    }
    ~ScratchFolder() { std::filesystem::remove_all(root_); }
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;

    [[nodiscard]] std::string path(const std::string& name) const {
        return (root_ / name).string();
    }
    /// Of everything in it, hidden files too.
    [[nodiscard]] std::ptrdiff_t count() const {
        return std::distance(std::filesystem::directory_iterator{root_}, {});
    }

private:
    std::filesystem::path root_;
};

inline std::string bytesOf(const std::string& path) {
    std::ifstream stream{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{stream}, {}};
}

}  // namespace nettare
