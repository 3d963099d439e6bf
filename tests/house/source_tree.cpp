#include "house/source_tree.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <fstream>
#include <iterator>

namespace nettare {

namespace {

namespace fs = std::filesystem;

bool isBuildOrHiddenFolder(const fs::path& folder) {
    const std::string name = folder.filename().string();
    return (name.starts_with('.') && name != ".ci") || name == "build" ||
           name.starts_with("build-");
}

std::string quotedForShell(const std::string& text) {
    std::string quoted = "'";
    for (const char c : text) quoted += c == '\'' ? std::string{"'\\''"} : std::string{c};
    return quoted + "'";
}

/// What the command prints; nothing where it fails.
std::string printedBy(const std::string& command) {
    FILE* pipe = popen(command.c_str(), "r");
    if (pipe == nullptr) return {};
    std::string printed;
    std::array<char, 4096> buffer{};
    std::size_t count = 0;
    while ((count = fread(buffer.data(), 1, buffer.size(), pipe)) > 0)
        printed.append(buffer.data(), count);
    return pclose(pipe) == 0 ? printed : std::string{};
}

}  // namespace

std::vector<std::string> trackedFiles(const fs::path& root) {
    // A commit hook sets variables that name another work tree; a checkout may belong to another
    // user, which git refuses unless it is told that the folder is meant.
    const std::string folder = quotedForShell(root.string());
    const std::string listed = printedBy("unset GIT_DIR GIT_WORK_TREE GIT_INDEX_FILE; test -e " +
                                         folder + "/.git && git -c safe.directory=" + folder +
                                         " -C " + folder + " ls-files -z 2>/dev/null");
    std::vector<std::string> names;
    std::size_t start = 0;
    for (std::size_t end = 0; (end = listed.find('\0', start)) != std::string::npos;
         start = end + 1) {
        std::string name = listed.substr(start, end - start);
        if (fs::is_regular_file(root / name)) names.push_back(std::move(name));
    }
    std::ranges::sort(names);
    return names;
}

std::vector<std::string> walkedFiles(const fs::path& root) {
    std::vector<std::string> names;
    auto entry = fs::recursive_directory_iterator{root};
    for (; entry != fs::recursive_directory_iterator{}; ++entry) {
        if (entry->is_directory() && isBuildOrHiddenFolder(entry->path()))
            entry.disable_recursion_pending();
        else if (entry->is_regular_file() && entry->path().filename() != ".git")
            names.push_back(entry->path().lexically_relative(root).generic_string());
    }
    std::ranges::sort(names);
    return names;
}

std::vector<std::string> sourceTree(const fs::path& root) {
    std::vector<std::string> names = trackedFiles(root);
    return names.empty() ? walkedFiles(root) : names;
}

SourceFile readSource(const fs::path& root, const std::string& name) {
    std::ifstream stream{root / name, std::ios::binary};
    SourceFile file;
    file.name = name;
    file.bytes.assign(std::istreambuf_iterator<char>{stream}, {});
    const fs::perms any = fs::perms::owner_exec | fs::perms::group_exec | fs::perms::others_exec;
    file.executable = (fs::status(root / name).permissions() & any) != fs::perms::none;
    return file;
}

}  // namespace nettare
