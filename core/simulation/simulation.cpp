#include "core/simulation/simulation.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <mutex>
#include <system_error>
#include <thread>

namespace nettare {

namespace {

/// The chunks of one run, taken in turn by its threads. Each chunk has its place in the values,
/// so that it does not matter which thread drew it.
class Run {
public:
    Run(const SimulationPlan& plan, const DrawChunk& draw)
        : plan_{plan},
          draw_{draw},
          chunks_{(plan.trials + kChunkTrials - 1) / kChunkTrials},
          values_(plan.trials) {}

    void work() {
        std::vector<double> chunk;
        while (!ended_) {
            const std::uint64_t place = next_++;
            if (place >= chunks_) return;
            const std::uint64_t first = place * kChunkTrials;
            chunk.assign(std::min(kChunkTrials, plan_.trials - first), 0.0);
            draw_(place, plan_.seed, chunk);
            std::ranges::sort(chunk);
            std::ranges::copy(chunk, values_.begin() + static_cast<std::ptrdiff_t>(first));
            tell(chunk.size());
        }
    }

    [[nodiscard]] bool ended() const { return ended_; }

    /// All values in ascending order: sorted chunks are merged two and two.
    [[nodiscard]] std::vector<double> takeSorted() {
        const auto at = [&](std::uint64_t trial) {
            return values_.begin() + static_cast<std::ptrdiff_t>(std::min(trial, plan_.trials));
        };
        for (std::uint64_t width = kChunkTrials; width < plan_.trials; width *= 2)
            for (std::uint64_t first = 0; first + width < plan_.trials; first += 2 * width)
                std::inplace_merge(at(first), at(first + width), at(first + 2 * width));
        return std::move(values_);
    }

private:
    /// One thread at a time, so that the numbers told only grow.
    void tell(std::uint64_t trials) {
        const std::lock_guard lock{telling_};
        done_ += trials;
        if (!ended_ && plan_.goOn && !plan_.goOn(done_)) ended_ = true;
    }

    const SimulationPlan& plan_;
    const DrawChunk& draw_;
    std::uint64_t chunks_;
    std::vector<double> values_;
    std::atomic<std::uint64_t> next_ = 0;
    std::atomic<bool> ended_ = false;
    std::mutex telling_;
    std::uint64_t done_ = 0;
};

/// Works with so many threads, this one among them; with fewer where the system has no more.
void workTogether(Run& run, unsigned threads) {
    std::vector<std::jthread> others;
    try {
        for (unsigned other = 1; other < threads; ++other)
            others.emplace_back([&run] { run.work(); });
    } catch (const std::system_error&) {
        // No more to be had.
    }
    run.work();
}

/// Place of the low end among the sorted trials, from 0, and how many further the high end lies:
/// the probabilistically symmetric interval of JCGM 101:2008, 7.7.
struct IntervalPlaces {
    std::size_t low, further;
};

IntervalPlaces placesOf(std::size_t trials) {
    // q = p M, or the integer part of p M + 1/2, in whole twentieths.
    const std::size_t inside = (trials * 19 + 10) / 20;
    // r = (M - q) / 2, or the integer part of (M - q + 1) / 2, counted from 1.
    const std::size_t outside = (trials - inside + 1) / 2;
    const std::size_t low = std::max<std::size_t>(outside, 1) - 1;
    return {low, std::min(inside, trials - 1 - low)};
}

/// About the first value, so that equal ones have no deviation at all.
void summarise(Simulation& simulation) {
    const auto count = static_cast<double>(simulation.sorted.size());
    const double about = simulation.sorted.front();
    double sum = 0;
    for (const double value : simulation.sorted) sum += value - about;
    const double mean = sum / count;
    double squares = 0;
    for (const double value : simulation.sorted) {
        const double off = value - about - mean;
        squares += off * off;
    }
    simulation.mean = about + mean;
    simulation.u = std::sqrt(squares / (count - 1));
}

}  // namespace

double Simulation::probabilityAtMost(double limit) const {
    if (sorted.empty()) return 0;
    const auto beyond = std::ranges::upper_bound(sorted, limit);
    return static_cast<double>(beyond - sorted.begin()) / static_cast<double>(sorted.size());
}

std::optional<Simulation> simulate(const SimulationPlan& plan, const DrawChunk& draw) {
    if (plan.trials < 2) return std::nullopt;
    Run run{plan, draw};
    workTogether(run, plan.threads);
    if (run.ended()) return std::nullopt;
    Simulation simulation;
    simulation.trials = plan.trials;
    simulation.sorted = run.takeSorted();
    summarise(simulation);
    const IntervalPlaces places = placesOf(simulation.sorted.size());
    simulation.low = simulation.sorted[places.low];
    simulation.high = simulation.sorted[places.low + places.further];
    return simulation;
}

// u = c x 10^l with c of two digits: the tolerance is half of 10^l.
bool agree(double u, double low, double high, const Simulation& simulation) {
    if (u == 0) return simulation.u == 0;
    double unit = std::pow(10, std::floor(std::log10(u)) - 1);
    if (u >= 99.5 * unit) unit *= 10;
    const double tolerance = unit / 2;
    return std::fabs(low - simulation.low) <= tolerance &&
           std::fabs(high - simulation.high) <= tolerance;
}

}  // namespace nettare
