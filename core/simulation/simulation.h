#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace nettare {

/// How a simulation runs. The same seed gives the same numbers on every number of threads: trials
/// are drawn in chunks of kChunkTrials, each seeded by its place.
struct SimulationPlan {
    std::uint64_t trials = 1'000'000;
    std::uint32_t seed = 1;
    unsigned threads = 2;
    /// Asked after every chunk, from any thread, with the trials done so far; false ends the run.
    std::function<bool(std::uint64_t done)> goOn{};
};
inline constexpr std::uint64_t kChunkTrials = 65'536;

/// What came out of a simulation (JCGM 101:2008, 7.5 to 7.7).
struct Simulation {
    std::uint64_t trials = 0;
    double mean = 0;
    double u = 0;    ///< standard deviation of the trials
    double low = 0;  ///< probabilistically symmetric 95 % interval
    double high = 0;
    std::vector<double> sorted{};  ///< every trial, ascending

    /// Share of the trials that are at most `limit`, 0 to 1.
    [[nodiscard]] double probabilityAtMost(double limit) const;
};

/// Fills `values` with one trial each, drawn by the generator of that chunk.
using DrawChunk =
    std::function<void(std::uint64_t chunk, std::uint32_t seed, std::vector<double>& values)>;

/// Runs a model; nothing where the plan's `goOn` ended it.
[[nodiscard]] std::optional<Simulation> simulate(const SimulationPlan& plan, const DrawChunk& draw);

/// Whether an interval by the law of propagation agrees with a simulated one: both ends within half
/// a unit of the second significant digit of u (JCGM 101:2008, clause 8).
[[nodiscard]] bool agree(double u, double low, double high, const Simulation& simulation);

}  // namespace nettare
