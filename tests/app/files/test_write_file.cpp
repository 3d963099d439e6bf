#include <catch2/catch.hpp>

#include "app/files/write_file.h"

#include "small_disk.h"
#include "support/scratch_folder.h"

#include <sys/stat.h>

using namespace nettare;

namespace {

namespace fs = std::filesystem;

constexpr uid_t kNobody = 65534;

/// The superuser may write anywhere; tests of permissions run as somebody else.
class AsOrdinaryUser {
public:
    AsOrdinaryUser() {
        if (before_ == 0) REQUIRE(seteuid(kNobody) == 0);
    }
    ~AsOrdinaryUser() {
        if (before_ == 0 && seteuid(before_) != 0) std::abort();
    }
    AsOrdinaryUser(const AsOrdinaryUser&) = delete;
    AsOrdinaryUser& operator=(const AsOrdinaryUser&) = delete;

private:
    uid_t before_ = geteuid();
};

std::string reasonFor(const std::string& path, std::string_view bytes = "new") {
    const auto written = writeFile(path, bytes);
    REQUIRE_FALSE(written);
    CHECK(written.error().code == ErrorCode::FileNotWritable);
    CHECK(written.error().file == path);
    return std::string{written.error().value("reason")};
}

fs::perms permissionsOf(const std::string& path) {
    return fs::status(path).permissions();
}

}  // namespace

TEST_CASE("a file is written whole and nothing else is left in its folder", "[files]") {
    const ScratchFolder folder{"whole"};
    const std::string bytes(100'000, 'x');
    REQUIRE(writeFile(folder.path("panel.pdf"), bytes));
    CHECK(bytesOf(folder.path("panel.pdf")) == bytes);
    REQUIRE(writeFile(folder.path("panel.pdf"), ""));
    CHECK(bytesOf(folder.path("panel.pdf")).empty());
    CHECK(folder.count() == 1);
}

TEST_CASE("a name without a folder is written in the folder one stands in", "[files]") {
    const ScratchFolder folder{"here"};
    const fs::path before = fs::current_path();
    fs::current_path(folder.path("."));
    const auto written = writeFile("panel.pdf", "here");
    fs::current_path(before);
    REQUIRE(written);
    CHECK(bytesOf(folder.path("panel.pdf")) == "here");
}

TEST_CASE("a file written anew keeps its permissions, and a link stays a link", "[files]") {
    const ScratchFolder folder{"link"};
    REQUIRE(writeFile(folder.path("panel.pdf"), "old"));
    fs::permissions(folder.path("panel.pdf"), fs::perms::owner_read | fs::perms::owner_write);
    fs::create_symlink("panel.pdf", folder.path("latest.pdf"));
    REQUIRE(writeFile(folder.path("latest.pdf"), "new"));
    CHECK(bytesOf(folder.path("panel.pdf")) == "new");
    CHECK(fs::is_symlink(folder.path("latest.pdf")));
    CHECK(permissionsOf(folder.path("panel.pdf")) ==
          (fs::perms::owner_read | fs::perms::owner_write));
}

TEST_CASE("a new file has the permissions that the user's mask leaves", "[files]") {
    const ScratchFolder folder{"mask"};
    const mode_t before = umask(027);
    const auto written = writeFile(folder.path("panel.pdf"), "new");
    umask(before);
    REQUIRE(written);
    CHECK(permissionsOf(folder.path("panel.pdf")) == fs::perms{0640});
}

TEST_CASE("a file that cannot be written says why", "[files]") {
    const ScratchFolder folder{"why"};
    REQUIRE(writeFile(folder.path("note.txt"), "text"));
    CHECK(reasonFor("") == "no file is named");
    CHECK(reasonFor(folder.path("missing/panel.pdf")) == "the folder does not exist");
    CHECK(reasonFor(folder.path("missing/")) == "the folder does not exist");
    CHECK(reasonFor(folder.path(".")) == "it is a folder");
    CHECK(reasonFor(folder.path("note.txt/panel.pdf")) == "a part of its path is not a folder");
    CHECK(reasonFor("/dev/null") == "it is not a plain file");
    CHECK(reasonFor(folder.path(std::string(300, 'a'))) == "its name is too long");
    CHECK(folder.count() == 1);
}

TEST_CASE("without permission nothing is written and the old file stays", "[files]") {
    const ScratchFolder folder{"permission"};
    REQUIRE(writeFile(folder.path("panel.pdf"), "old"));
    SECTION("of the folder") {
        fs::permissions(folder.path("."), fs::perms{0555});
        const AsOrdinaryUser ordinary;
        CHECK(reasonFor(folder.path("other.pdf")) == "permission is denied");
        CHECK(reasonFor(folder.path("panel.pdf")) == "permission is denied");
    }
    SECTION("of the file, though its folder could be written") {
        fs::permissions(folder.path("panel.pdf"), fs::perms{0444});
        const AsOrdinaryUser ordinary;
        CHECK(reasonFor(folder.path("panel.pdf")) == "permission is denied");
    }
    CHECK(bytesOf(folder.path("panel.pdf")) == "old");
    CHECK(folder.count() == 1);
}

TEST_CASE("a write that is cut short fails and keeps the old file", "[files]") {
    const ScratchFolder folder{"short"};
    REQUIRE(writeFile(folder.path("panel.pdf"), "old"));
    std::string reason;
    {
        const SmallDisk disk{10'000};
        reason = reasonFor(folder.path("panel.pdf"), std::string(20'000, 'x'));
    }
    CHECK(reason == "the system allows no file as large");
    CHECK(bytesOf(folder.path("panel.pdf")) == "old");
    CHECK(folder.count() == 1);
}
