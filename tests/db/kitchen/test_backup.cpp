#include <catch2/catch.hpp>

#include "one_kitchen.h"
#include "sample_dishes.h"

using namespace nettare;

TEST_CASE("a backup holds everything, while the kitchen stays open", "[kitchen]") {
    const OneKitchen one;
    const std::string copy = one.folder().path("copy.nettare");
    Kitchen kitchen = one.open();
    const std::string id = *kitchen.addRecipe(dish("soup"), kNoon);
    REQUIRE(kitchen.record(shown(1, "340")));
    REQUIRE(kitchen.keep(id, toKeep(dish("soup"), "")));
    REQUIRE(kitchen.backUp(copy));
    REQUIRE(kitchen.record(shown(2, "341")));
    CHECK_FALSE(one.folder().has("copy.nettare-wal"));
    CHECK(pagesOf(copy) == "ok");
    const auto saved = Kitchen::open(copy, KitchenAccess::Write);
    REQUIRE(saved);
    CHECK(saved->verify()->faults.empty());
    CHECK(saved->ledger()->size() == 1);
    CHECK(saved->revision(id, 1)->summary.title == "soup");
    CHECK(askSql(copy, "SELECT uuid FROM kitchen") ==
          askSql(one.path(), "SELECT uuid FROM kitchen"));
}

TEST_CASE("a backup never takes the place of a file", "[kitchen]") {
    const OneKitchen one;
    one.folder().write("copy.nettare", "the backup of last week");
    const Kitchen kitchen = one.open();
    const auto refused = kitchen.backUp(one.folder().path("copy.nettare"));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == ErrorCode::KitchenExists);
    CHECK(refused.error().file == one.folder().path("copy.nettare"));
    CHECK(one.folder().read("copy.nettare") == "the backup of last week");
    CHECK(kitchen.backUp(one.path()).error().code == ErrorCode::KitchenExists);
    const auto nowhere = kitchen.backUp(one.folder().path("no folder/copy.nettare"));
    REQUIRE_FALSE(nowhere);
    CHECK(nowhere.error().code == ErrorCode::KitchenNotWritable);
}
