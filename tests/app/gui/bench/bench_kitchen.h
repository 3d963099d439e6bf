#pragma once

#include <memory>
#include <string>
#include <vector>

#include "app/bench/bench_desk.h"
#include "app/session/kitchen_session.h"

namespace nettare {

/// A desk on a kitchen in memory with a scale "counter" that shows steps of 0.1 g.
class BenchKitchen {
public:
    BenchKitchen();

    [[nodiscard]] KitchenSession& kitchen() { return *kitchen_; }
    [[nodiscard]] BenchDesk& desk() { return *desk_; }
    /// Weighs prawns of a series, one by one, and waits for the ledger.
    void weighPrawns(const std::vector<const char*>& grams,
                     const std::vector<std::string>& tags = {},
                     const std::string& what = "prawn meat");
    /// Leaves the newest readings of a food out of their series.
    void leaveOut(const std::string& what, int readings);
    /// Lets all that was asked be answered.
    void rest();

private:
    std::unique_ptr<KitchenSession> kitchen_;
    std::unique_ptr<BenchDesk> desk_;
    int minute_ = 0;
};

}  // namespace nettare
