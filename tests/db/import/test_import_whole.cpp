#include <catch2/catch.hpp>
#include <filesystem>

#include "db/food_table.h"
#include "db/import/import_parts.h"
#include "db/import/table_writer.h"
#include "kitchen/volatile_disk.h"
#include "small_sr28.h"

using namespace nettare;

TEST_CASE("the same import leaves the file as it is", "[import]") {
    const SmallSr28 small;
    REQUIRE(importTable(small.request())->written);
    const std::string before = bytesOf(small.table());
    const auto since = std::filesystem::last_write_time(small.table());
    const auto again = importTable(small.request());
    REQUIRE(again);
    CHECK(again->unchanged);
    CHECK_FALSE(again->written);
    CHECK(bytesOf(small.table()) == before);
    CHECK(std::filesystem::last_write_time(small.table()) == since);
    CHECK(small.listed() == "usda-sr_28.table\n");
}

TEST_CASE("other content takes the place of the table", "[import]") {
    SmallSr28 small;
    REQUIRE(importTable(small.request()));
    small.addRow("FOOD_DES.txt",
                 "~90007~^~1100~^~Sun kale, raw~^~KALE~^~~^~~^~~^~~^0^~~^6.25^2.44^8.37^3.57");
    const auto again = importTable(small.request());
    REQUIRE(again);
    CHECK(again->written);
    CHECK_FALSE(again->unchanged);
    CHECK(FoodTable::open(small.table())->size() == 7);
}

TEST_CASE("a dry run reports all and writes nothing", "[import]") {
    SmallSr28 small;
    small.addRow("WEIGHT.txt", "~90099~^1^1^~cup~^100^^");
    auto request = small.request();
    request.dryRun = true;
    const auto report = importTable(request);
    REQUIRE(report);
    CHECK(report->foods == 6);
    CHECK(report->values == 8);
    CHECK(report->measures == 5);
    CHECK(report->rejected == 1);
    CHECK_FALSE(report->written);
    CHECK_FALSE(report->unchanged);
    CHECK_FALSE(std::filesystem::exists(small.tables()));
}

TEST_CASE("a stopped import leaves the old table", "[import]") {
    SmallSr28 small;
    REQUIRE(importTable(small.request()));
    const std::string before = bytesOf(small.table());
    small.addRow("WEIGHT.txt", "~90001~^4^1^~pint~^300^^");
    int asked = 0;
    // Stopped at each telling in turn, until one import gets through.
    for (int until = 1;; ++until) {
        asked = 0;
        const auto report = importTable(
            small.request(), [&](const ImportProgress& /*progress*/) { return ++asked < until; });
        if (report) break;
        CHECK(report.error().code == ErrorCode::ImportStopped);
        CHECK(bytesOf(small.table()) == before);
        CHECK(small.listed() == "usda-sr_28.table\n");
        REQUIRE(until < 100);
    }
    CHECK(asked >= 7);
    CHECK(bytesOf(small.table()) != before);
}

TEST_CASE("progress counts the bytes of all files", "[import]") {
    const SmallSr28 small;
    std::size_t last = 0;
    std::size_t all = 0;
    REQUIRE(importTable(small.request(), [&](const ImportProgress& progress) {
        CHECK(progress.bytesDone >= last);
        last = progress.bytesDone;
        all = progress.bytesInAll;
        return true;
    }));
    CHECK(last == all);
    CHECK(all > 1000);
}

TEST_CASE("on a full disk the old table stays, and the import works once there is room",
          "[import][full]") {
    SmallSr28 small;
    REQUIRE(importTable(small.request()));
    const std::string before = bytesOf(small.table());
    small.addRow("WEIGHT.txt", "~90001~^4^1^~pint~^300^^");
    int refused = 0;
    bool done = false;
    for (int room = 0; room < 5000 && !done; room += 1 + room / 8) {
        // A new one each time: it remembers files of the same name.
        VolatileDisk disk;
        disk.fullAfterWrites(room);
        const auto report = importTable(small.request());
        done = report.has_value();
        if (done) break;
        ++refused;
        CHECK(report.error().code == ErrorCode::FileNotWritable);
        CHECK(report.error().file == small.table());
        CHECK(report.error().value("reason") == "database or disk is full");
        CHECK(bytesOf(small.table()) == before);
        CHECK(small.listed() == "usda-sr_28.table\n");
    }
    CHECK(done);
    CHECK(refused > 0);
    // What the forgetful disk held is gone; with a true one the same import works.
    REQUIRE(importTable(small.request()));
    CHECK((*FoodTable::open(small.table())->find("90001"))->measures.size() == 4);
}

TEST_CASE("a second import into the folder waits for its turn", "[import]") {
    const SmallSr28 small;
    const auto writer = TableWriter::begin({.table = "moon",
                                            .release = "1",
                                            .citation = "ours",
                                            .folder = small.tables(),
                                            .dryRun = false});
    REQUIRE(writer);
    const auto report = importTable(small.request());
    REQUIRE_FALSE(report);
    CHECK(report.error().code == ErrorCode::ImportBusy);
}

TEST_CASE("each table and release has a file name of its own", "[import]") {
    CHECK(tableFileName("usda-sr", "28") == "usda-sr_28.table");
    CHECK(tableFileName("a_b", "c") == "a%5Fb_c.table");
    CHECK(tableFileName("../x", "1/2") == "..%2Fx_1%2F2.table");
}
