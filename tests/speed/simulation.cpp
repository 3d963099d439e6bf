#include <benchmark/benchmark.h>

#include <algorithm>
#include <cstdio>
#include <map>
#include <string>

#include "core/simulation/draws.h"
#include "core/simulation/figure_model.h"
#include "core/simulation/figure_plan.h"
#include "generated_kitchen.h"

// 10^6 trials of one figure of a 40-line recipe, beside drawing the same numbers alone.

namespace nettare {
namespace {

constexpr std::size_t kTogether = 256;

struct Dish {
    Dossier dossier = generatedDossier(40);
    Cooked cooked;
    Figures figures;

    Dish() {
        auto done = cook(dossier);
        if (!done) std::exit(1);
        cooked = std::move(*done);
        auto per = figuresPer(Basis::Portion, dossier, cooked);
        if (!per) std::exit(1);
        figures = std::move(*per);
    }
};

const Dish& dish() {
    static const Dish kDish;
    return kDish;
}

/// Every number that the plan needs for so many trials, and nothing done with it.
void drawAlone(const FigurePlan& plan, std::uint64_t chunk, std::uint32_t seed,
               std::uint64_t trials) {
    Draws draws{seed, chunk};
    std::vector<double> drawn(kTogether);
    for (std::uint64_t done = 0; done < trials; done += kTogether) {
        for (const double freedom : plan.pools) draws.spreadFactors(freedom, drawn);
        for (const FigurePlan::DrawnSource& one : plan.sources)
            one.source.law == Law::Rectangle ? draws.uniforms(drawn) : draws.normals(drawn);
        benchmark::DoNotOptimize(drawn.data());
        benchmark::ClobberMemory();
    }
}

void onlyDrawing(benchmark::State& state) {
    const FigurePlan plan =
        planOf(Component::ENERC_KCAL, dish().figures, dish().dossier, dish().cooked);
    const SimulationPlan run;
    for (auto _ : state)
        for (std::uint64_t first = 0; first < run.trials; first += kChunkTrials)
            drawAlone(plan, first / kChunkTrials, run.seed,
                      std::min(kChunkTrials, run.trials - first));
    state.counters["sources"] = static_cast<double>(plan.sources.size());
    state.counters["pools"] = static_cast<double>(plan.pools.size());
}

void wholeSimulation(benchmark::State& state) {
    SimulationPlan run;
    run.threads = static_cast<unsigned>(state.range(0));
    for (auto _ : state) {
        const auto model =
            figureModel(Component::ENERC_KCAL, dish().figures, dish().dossier, dish().cooked);
        benchmark::DoNotOptimize(simulate(run, model));
    }
}

BENCHMARK(onlyDrawing)->Unit(benchmark::kMillisecond);
BENCHMARK(wholeSimulation)->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(wholeSimulation)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime();

/// Keeps the processor times to compare them at the end of the run.
class DrawingReporter : public benchmark::ConsoleReporter {
public:
    DrawingReporter() : ConsoleReporter{OO_Tabular} {}

    void ReportRuns(const std::vector<Run>& runs) override {
        for (const Run& run : runs) times_[run.benchmark_name()] = run.GetAdjustedCPUTime();
        ConsoleReporter::ReportRuns(runs);
    }

    void printRatio() const {
        const auto alone = times_.find("onlyDrawing");
        const auto whole = times_.find("wholeSimulation/1");
        if (alone == times_.end() || whole == times_.end()) return;
        std::printf("a simulation takes %.2f times its drawing\n", whole->second / alone->second);
    }

private:
    std::map<std::string, double> times_;
};

}  // namespace
}  // namespace nettare

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    nettare::DrawingReporter reporter;
    benchmark::RunSpecifiedBenchmarks(&reporter);
    reporter.printRatio();
}
