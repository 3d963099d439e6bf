#include "bench_work.h"

#include <fmt/format.h>

#include <array>
#include <chrono>

namespace nettare {

namespace {

constexpr std::size_t kRemembered = 40;

}  // namespace

LedgerEntry BenchWork::next() {
    ++entries_;
    const auto turn = random_() % 100;
    if (entries_ % 150 == 1) return equipmentEntry();
    if (tare_.empty() || turn < 10) return tare();
    if (turn < 18 && !standing_.empty()) return spoken();
    return reading();
}

std::string BenchWork::food(int n) const {
    return fmt::format("food {}", n % foods_);
}

std::string BenchWork::uuid() {
    const std::uint64_t a = random_(), b = random_(), c = random_(), d = random_();
    return fmt::format("{:08x}-{:04x}-4{:03x}-8{:03x}-{:08x}{:04x}", a, b >> 16U, b & 0xFFFU,
                       c >> 20U, d, c & 0xFFFFU);
}

std::string BenchWork::time() const {
    using namespace std::chrono;
    constexpr sys_days kFirstDay = year{2026} / May / 16;
    const auto moment = kFirstDay + hours{8} + seconds{std::int64_t{apart_s_} * entries_};
    const auto day = floor<days>(moment);
    const year_month_day date{day};
    const hh_mm_ss clock{moment - day};
    return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}Z", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                       clock.hours().count(), clock.minutes().count(), clock.seconds().count());
}

LedgerEntry BenchWork::fresh(EntryKind kind) {
    LedgerEntry entry;
    entry.kind = kind;
    entry.id = uuid();
    entry.at = time();
    return entry;
}

LedgerEntry BenchWork::shownOn(Decimal shown) {
    LedgerEntry entry = fresh(EntryKind::Shown);
    entry.recipe = "skewers";
    entry.indication = entry.id;
    entry.scale = "counter scale";
    entry.unit = std::string{"g"};
    entry.readability = Decimal{1, -1};
    entry.shown = shown;
    return entry;
}

LedgerEntry BenchWork::tare() {
    LedgerEntry entry = shownOn(Decimal{2000 + static_cast<int>(random_() % 500), -1});
    entry.state = WeighedState::Empty;
    entry.vessel = "steel bowl";
    tare_ = entry.id;
    return entry;
}

LedgerEntry BenchWork::reading() {
    LedgerEntry entry = shownOn(Decimal{2500 + static_cast<int>(random_() % 900), -1});
    entry.what = food(ofSeries_++);
    entry.why = "edible portion per piece, for “Skewers”";
    entry.row = "usda-sr 28 15149";
    entry.pieces = 1 + static_cast<int>(random_() % 6);
    entry.series = SeriesMark{SeriesKind::PerPiece, "piece", {}, ""};
    if (random_() % 2 == 0) entry.series->tags = {"peeled", "size 16/20"};
    if (random_() % 3 == 0)
        entry.vesselTare = Decimal{2120, -1};
    else
        entry.tare = tare_;
    const bool ratio = !standing_.empty() && !standing_.back().ratio && random_() % 10 == 0;
    if (ratio)
        entry.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, standing_.back().id};
    standing_.push_back({entry.id, false, ratio});
    if (standing_.size() > kRemembered) standing_.pop_front();
    return entry;
}

LedgerEntry BenchWork::equipmentEntry() {
    constexpr std::array kKinds{EntryKind::Scale, EntryKind::Vessel, EntryKind::Checked};
    LedgerEntry entry = shownOn(Decimal{5000, -1});
    entry.kind = kKinds[static_cast<std::size_t>(equipment_++) % kKinds.size()];
    entry.recipe.clear();
    entry.indication.clear();
    entry.mass = Decimal{500, 0};
    entry.capacity = Decimal{3000, 0};
    entry.vessel = "steel bowl";
    return entry;
}

LedgerEntry BenchWork::spoken() {
    const std::size_t place = random_() % standing_.size();
    Standing& chosen = standing_[place];
    LedgerEntry entry = fresh(EntryKind::LeftOut);
    entry.refersTo = chosen.id;
    entry.reason = "a shell was in it";
    if (chosen.leftOut) {
        entry.kind = random_() % 2 == 0 ? EntryKind::TakenIn : EntryKind::Reasoned;
        chosen.leftOut = entry.kind == EntryKind::Reasoned;
    } else if (random_() % 2 == 0) {
        chosen.leftOut = true;
    } else {
        entry.kind = EntryKind::Superseded;
        entry.reason = "slip of the hand";
        standing_.erase(standing_.begin() + static_cast<std::ptrdiff_t>(place));
    }
    return entry;
}

}  // namespace nettare
