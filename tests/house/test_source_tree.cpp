#include <catch2/catch.hpp>

#include "house/source_tree.h"

#include <algorithm>
#include <fstream>

using namespace nettare;

namespace {

namespace fs = std::filesystem;

/// A folder in the build folder, one for each test since tests run at the same time; gone at the
/// end.
class LooseTree {
public:
    explicit LooseTree(const char* name) : root_{fs::path{NETTARE_LOOSE_TREES} / name} {
        fs::remove_all(root_);
        fs::create_directories(root_);
    }
    ~LooseTree() { fs::remove_all(root_); }
    LooseTree(const LooseTree&) = delete;
    LooseTree& operator=(const LooseTree&) = delete;

    void add(const std::string& name, const std::string& bytes) const {
        fs::create_directories((root_ / name).parent_path());
        std::ofstream{root_ / name, std::ios::binary} << bytes;
    }
    [[nodiscard]] const fs::path& root() const { return root_; }

private:
    fs::path root_;
};

}  // namespace

TEST_CASE("the tree keeps the rules of the house", "[house]") {
    const auto names = sourceTree(NETTARE_SOURCE_ROOT);
    REQUIRE(std::ranges::count(names, "core/quantity/mass.h") == 1);
    std::vector<std::string> broken;
    for (const std::string& name : names)
        for (std::string& sentence : brokenRules(readSource(NETTARE_SOURCE_ROOT, name)))
            broken.push_back(std::move(sentence));
    for (const std::string& sentence : broken) UNSCOPED_INFO(sentence);
    CHECK(broken.empty());
}

TEST_CASE("a source tree without git is walked, build folders left out", "[house]") {
    const LooseTree tree{"a cook's tree"};
    tree.add("core/it's.h", "int a;\n");
    tree.add(".ci/run", "#!/bin/sh\n");
    tree.add(".clang-format", "BasedOnStyle: Google\n");
    tree.add("build/dev/made.cpp", "made");
    tree.add("build-old/made.cpp", "made");
    tree.add(".cache/made.cpp", "made");
    const std::vector<std::string> expected{".ci/run", ".clang-format", "core/it's.h"};
    CHECK(trackedFiles(tree.root()).empty());
    CHECK(sourceTree(tree.root()) == expected);
}

TEST_CASE("a file is read with all its bytes and its executable bit", "[house]") {
    const LooseTree tree{"bits"};
    tree.add("a.bin", std::string{"a\0\r\n", 4});
    CHECK(readSource(tree.root(), "a.bin").bytes == std::string{"a\0\r\n", 4});
    CHECK_FALSE(readSource(tree.root(), "a.bin").executable);
    fs::permissions(tree.root() / "a.bin", fs::perms::owner_exec, fs::perm_options::add);
    CHECK(readSource(tree.root(), "a.bin").executable);
    CHECK(brokenRules(readSource(tree.root(), "a.bin")).size() == 1);
}
