#include "app/bench/bench_desk.h"

#include <catch2/catch.hpp>

#include "app/gui/bench/bench_kitchen.h"

namespace nettare {

namespace {

const SeriesKey kPrawnMeat{"prawn meat", SeriesKind::PerPiece, "prawn"};

}  // namespace

TEST_CASE("a series is judged from its readings, with those that were left out beside them") {
    BenchKitchen bench;
    bench.weighPrawns({"9.6", "9.9", "10.1", "9.7", "9.8", "14.0"});
    bench.desk().showSeries(kPrawnMeat);
    bench.rest();
    REQUIRE(bench.desk().series() != nullptr);
    CHECK(bench.desk().series()->report->statistics.readings == 6);
    bench.desk().leaveOut(bench.desk().ledger().front().entry().id, QStringLiteral("with head"));
    bench.rest();
    const BenchSeries& series = *bench.desk().series();
    CHECK(series.report->statistics.readings == 5);
    CHECK(series.report->statistics.mean == Approx(9.82));
    CHECK(series.readings.size() == 6);
    CHECK(series.counted == std::vector<std::size_t>{0, 1, 2, 3, 4});
    CHECK(series.readings.back().reason == "with head");
}

TEST_CASE("tags split a series, and N others are asked of it until another one is looked at") {
    BenchKitchen bench;
    bench.weighPrawns({"9.6", "9.9"}, {"size 16/20"});
    bench.weighPrawns({"14.0", "14.4", "14.2"}, {"size 8/12"});
    bench.desk().showSeries(kPrawnMeat, {"size 8/12"});
    bench.desk().setOthers(36);
    bench.rest();
    REQUIRE(bench.desk().series() != nullptr);
    CHECK(bench.desk().series()->readings.size() == 3);
    CHECK(bench.desk().series()->knownTags == std::vector<std::string>{"size 16/20", "size 8/12"});
    REQUIRE(bench.desk().series()->report->others);
    CHECK(bench.desk().series()->report->others->value == Approx(36 * 14.2));
    bench.desk().showSeries({"Prawn Meat", SeriesKind::PerPiece, "prawn"});
    bench.rest();
    CHECK(bench.desk().series()->readings.size() == 5);
    CHECK(bench.desk().series()->report->others);
}

TEST_CASE("a fault of the ledger is told and leaves all as it was") {
    BenchKitchen bench;
    bench.weighPrawns({"9.6"});
    std::vector<ErrorCode> told;
    QObject::connect(&bench.desk(), &BenchDesk::failed, &bench.desk(),
                     [&told](const Error& error) { told.push_back(error.code); });
    const auto before = bench.desk().end().sequence;
    bench.desk().takeBack("00000000-0000-4000-8000-000000000000", QStringLiteral("slip"));
    bench.rest();
    REQUIRE(told.size() == 1);
    CHECK(bench.desk().end().sequence == before);
}

}  // namespace nettare
