#pragma once

#include <vector>

#include "app/bench/bench_series.h"

namespace nettare {

/// A series of single prawns that weighed so much each, in grams, judged as the bench does.
[[nodiscard]] BenchSeries prawnSeries(const std::vector<const char*>& grams);

/// What the ledger says of one of them.
[[nodiscard]] LedgerReading prawnReading(const char* grams, int pieces = 1);

}  // namespace nettare
