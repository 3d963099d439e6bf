#pragma once

#include <cstdint>
#include <deque>
#include <random>
#include <string>

#include "core/ledger/ledger_entry.h"

namespace nettare {

/// Weighing as it comes at a bench, entry by entry, always the same: tares, readings of pieces and
/// ratios, readings taken back, left out and taken in again with another reason, empty vessels,
/// scales and their checks. Every entry names only such as came before and may be named. All
/// weights are invented.
class BenchWork {
public:
    /// Readings take turns among so many foods; entries come so many seconds apart.
    explicit BenchWork(int foods, int secondsApart = 20) : foods_{foods}, apart_s_{secondsApart} {}

    [[nodiscard]] LedgerEntry next();

    /// How many entries came so far, and how many of them are readings of a series.
    [[nodiscard]] int entries() const { return entries_; }
    [[nodiscard]] int ofSeries() const { return ofSeries_; }
    [[nodiscard]] int equipment() const { return equipment_; }

    /// The food that reading number `n` (from 0) is of: "food 7".
    [[nodiscard]] std::string food(int n) const;

private:
    struct Standing {
        std::string id;
        bool leftOut = false, ratio = false;
    };

    [[nodiscard]] LedgerEntry fresh(EntryKind kind);
    [[nodiscard]] LedgerEntry shownOn(Decimal shown);
    [[nodiscard]] LedgerEntry tare();
    [[nodiscard]] LedgerEntry reading();
    [[nodiscard]] LedgerEntry equipmentEntry();
    [[nodiscard]] LedgerEntry spoken();
    [[nodiscard]] std::string uuid();
    [[nodiscard]] std::string time() const;

    int foods_, apart_s_;
    std::mt19937 random_{20260516};
    int entries_ = 0, ofSeries_ = 0, equipment_ = 0;
    std::string tare_;
    std::deque<Standing> standing_;  ///< the newest readings that were not taken back
};

}  // namespace nettare
