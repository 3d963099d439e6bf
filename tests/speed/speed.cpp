#include <benchmark/benchmark.h>

#include <cstdio>
#include <map>
#include <string>

#include "generated_kitchen.h"
#include "plain_pass.h"

// How long a keystroke waits for its figures, beside one plain pass over the same sensitivities.

namespace nettare {
namespace {

Cooked cookedOrExit(const Dossier& dossier) {
    auto cooked = cook(dossier);
    if (!cooked) std::exit(1);
    return std::move(*cooked);
}

void recompute(benchmark::State& state) {
    const Dossier dossier = generatedDossier(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) {
        const auto cooked = cook(dossier);
        benchmark::DoNotOptimize(figuresPer(Basis::Portion, dossier, *cooked));
    }
}

/// An edit of an amount: the foods and their compositions stay.
void keystroke(benchmark::State& state) {
    const Dossier dossier = generatedDossier(static_cast<std::size_t>(state.range(0)));
    Cooked cooked = cookedOrExit(dossier);
    for (auto _ : state) {
        cooked = std::move(*cook(dossier, std::move(cooked.compositions)));
        benchmark::DoNotOptimize(figuresPer(Basis::Portion, dossier, cooked));
    }
}

void onlyGrams(benchmark::State& state) {
    const Dossier dossier = generatedDossier(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) {
        std::vector<LineReport> report;
        benchmark::DoNotOptimize(eatenOf(dossier, 0, report));
    }
}

void onlyCompositions(benchmark::State& state) {
    const Dossier dossier = generatedDossier(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(compositionsOf(dossier));
}

void onlyBlock(benchmark::State& state) {
    const Dossier dossier = generatedDossier(static_cast<std::size_t>(state.range(0)));
    const Cooked cooked = cookedOrExit(dossier);
    for (auto _ : state) benchmark::DoNotOptimize(batchBlock(cooked.eaten, cooked.compositions));
}

void onlyFigures(benchmark::State& state) {
    const Dossier dossier = generatedDossier(static_cast<std::size_t>(state.range(0)));
    const Cooked cooked = cookedOrExit(dossier);
    for (auto _ : state) benchmark::DoNotOptimize(figuresPer(Basis::Portion, dossier, cooked));
}

void plainPass(benchmark::State& state) {
    const Dossier dossier = generatedDossier(static_cast<std::size_t>(state.range(0)));
    const Cooked cooked = cookedOrExit(dossier);
    const auto figures = figuresPer(Basis::Portion, dossier, cooked);
    const PlainPass pass{figures->block, cooked.compositions};
    for (auto _ : state) benchmark::DoNotOptimize(pass.squares());
    state.counters["numbers"] = static_cast<double>(pass.numbers());
}

BENCHMARK(plainPass)->Arg(40)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(recompute)->Arg(40)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(keystroke)->Arg(40)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(onlyGrams)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(onlyCompositions)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(onlyBlock)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(onlyFigures)->Arg(40)->Arg(60)->Unit(benchmark::kMicrosecond);

/// Keeps the processor times to compare them at the end of the run.
class RatioReporter : public benchmark::ConsoleReporter {
public:
    RatioReporter() : ConsoleReporter{OO_Tabular} {}

    void ReportRuns(const std::vector<Run>& runs) override {
        for (const Run& run : runs) times_[run.benchmark_name()] = run.GetAdjustedCPUTime();
        ConsoleReporter::ReportRuns(runs);
    }

    void printRatio(const std::string& what, const std::string& lines) const {
        const auto plain = times_.find("plainPass/" + lines);
        const auto whole = times_.find(what + "/" + lines);
        if (plain == times_.end() || whole == times_.end()) return;
        std::printf("%s/%s is %.1f times the plain pass\n", what.c_str(), lines.c_str(),
                    whole->second / plain->second);
    }

private:
    std::map<std::string, double> times_;
};

}  // namespace
}  // namespace nettare

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    nettare::RatioReporter reporter;
    benchmark::RunSpecifiedBenchmarks(&reporter);
    for (const char* what : {"recompute", "keystroke", "onlyFigures"})
        for (const char* lines : {"40", "60"}) reporter.printRatio(what, lines);
}
