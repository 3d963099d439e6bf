#include "app/gui/bench/bench_kitchen.h"

#include <fmt/format.h>
#include <catch2/catch.hpp>

#include "app/gui/session/demo_kitchen.h"
#include "app/scale/weighing.h"
#include "app/session/now.h"

namespace nettare {

BenchKitchen::BenchKitchen() {
    auto kitchen = Kitchen::inMemory(now());
    REQUIRE(kitchen);
    kitchen_ = std::make_unique<KitchenSession>(std::move(*kitchen), starterTable(), true);
    desk_ = std::make_unique<BenchDesk>(*kitchen_);
    desk_->keepScale({"counter", "g", Decimal{1, -1}, Decimal{3000, 0}, {}});
    rest();
}

void BenchKitchen::weighPrawns(const std::vector<const char*>& grams,
                               const std::vector<std::string>& tags, const std::string& what) {
    std::vector<LedgerEntry> entries;
    for (const char* const each : grams) {
        LedgerEntry entry;
        entry.id = freshUuid();
        entry.indication = "prawn-" + std::to_string(minute_);
        entry.at = fmt::format("2026-05-23T{:02}:{:02}:00+02:00", 8 + minute_ / 60, minute_ % 60);
        ++minute_;
        const auto shown = Decimal::read(each);
        REQUIRE(shown);
        entry.shown = *shown;
        entry.unit = "g";
        entry.readability = Decimal{1, -1};
        entry.scale = "counter";
        entry.what = what;
        entry.vesselTare = Decimal{0, 0};
        entry.series = SeriesMark{SeriesKind::PerPiece, "prawn", tags, {}};
        entries.push_back(std::move(entry));
    }
    desk_->record(entries);
    rest();
}

void BenchKitchen::leaveOut(const std::string& what, int readings) {
    std::vector<std::string> ids;
    for (const LedgerReading& reading : desk_->ledger())
        if (reading.entry().what == what && static_cast<int>(ids.size()) < readings)
            ids.push_back(reading.entry().id);
    for (const std::string& id : ids) {
        desk_->leaveOut(id, QStringLiteral("broken"));
        rest();
    }
}

void BenchKitchen::rest() {
    nettare::rest(*kitchen_);
    nettare::rest(*kitchen_);
}

}  // namespace nettare
