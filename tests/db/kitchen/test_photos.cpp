#include <catch2/catch.hpp>

#include "core/support/sha256.h"
#include "one_kitchen.h"
#include "sample_dishes.h"

namespace nettare {

namespace {

constexpr std::size_t kMostPhotoBytes = std::size_t{20} * 1024 * 1024;

std::string keptPhoto(Kitchen& kitchen, std::string_view bytes) {
    const auto hash = kitchen.keepPhoto(bytes, kNoon);
    if (!hash) FAIL(said(hash.error()));
    return *hash;
}

ErrorCode photoRefused(Kitchen& kitchen, std::string_view bytes) {
    const auto hash = kitchen.keepPhoto(bytes, kNoon);
    REQUIRE_FALSE(hash);
    return hash.error().code;
}

}  // namespace

TEST_CASE("a photograph of a package is kept once, by the hash of its bytes", "[kitchen][photo]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string hash = keptPhoto(kitchen, kSmallPng);
    CHECK(hash == sha256(kSmallPng));
    CHECK(keptPhoto(kitchen, kSmallPng) == hash);
    CHECK(keptPhoto(kitchen, kSmallJpeg) != hash);
    CHECK(**kitchen.photo(hash) == kSmallPng);
    CHECK_FALSE(*kitchen.photo(sha256("another pack")));
    const auto check = kitchen.verify();
    CHECK(check->photos == 2);
    CHECK(check->faults.empty());
    CHECK(askSql(one.path(), "SELECT group_concat(media_type) FROM label_photo") ==
          "image/png,image/jpeg");
}

TEST_CASE("what is no image, or a huge one, is no photograph", "[kitchen][photo]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    for (const char* bytes : {"", "\xff\xd8", "GIF89a", "<svg onload='x'/>", " \x89PNG\r\n\x1a\n"})
        CHECK(photoRefused(kitchen, bytes) == ErrorCode::PhotoNotAnImage);
    std::string huge{kSmallJpeg};
    huge.resize(kMostPhotoBytes, 'x');
    CHECK(**kitchen.photo(keptPhoto(kitchen, huge)) == huge);
    huge += 'x';
    CHECK(photoRefused(kitchen, huge) == ErrorCode::PhotoTooLarge);
    CHECK(kitchen.verify()->photos == 1);
    Kitchen reader = one.open(KitchenAccess::Read);
    CHECK(photoRefused(reader, kSmallPng) == ErrorCode::KitchenOpenToRead);
}

TEST_CASE("a photograph that is not the one that was kept is found, and not shown",
          "[kitchen][photo]") {
    const OneKitchen one;
    std::string hash;
    {
        Kitchen kitchen = one.open();
        hash = keptPhoto(kitchen, kSmallPng);
        keptPhoto(kitchen, kSmallJpeg);
    }
    runSql(one.path(),
           "DROP TRIGGER label_photo_is_not_edited; UPDATE label_photo SET bytes = x'ffd8ff' WHERE "
           "position = 1");
    const Kitchen kitchen = one.open();
    const auto check = kitchen.verify();
    REQUIRE(check->faults.size() == 1);
    CHECK(check->faults.front().code == ErrorCode::PhotoChanged);
    CHECK(hash.starts_with(check->faults.front().value("found").substr(0, 50)));
    CHECK(kitchen.photo(hash).error().code == ErrorCode::PhotoChanged);
    CHECK(**kitchen.photo(sha256(kSmallJpeg)) == kSmallJpeg);
}

TEST_CASE("a backup holds the photographs", "[kitchen][photo]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const std::string hash = keptPhoto(kitchen, kSmallPng);
    const std::string copy = one.folder().path("copy.nettare");
    REQUIRE(kitchen.backUp(copy));
    const auto there = Kitchen::open(copy, KitchenAccess::Read);
    REQUIRE(there);
    CHECK(**there->photo(hash) == kSmallPng);
    CHECK(there->verify()->photos == 1);
}

TEST_CASE("a photograph and the label that names it are kept together, or neither",
          "[kitchen][photo]") {
    const OneKitchen one;
    Kitchen kitchen = one.open();
    const auto neither = kitchen.together([&]() -> Result<void> {
        keptPhoto(kitchen, kSmallPng);
        return fail(ErrorCode::NotADate);
    });
    CHECK_FALSE(neither);
    CHECK(kitchen.verify()->photos == 0);
}

}  // namespace nettare
