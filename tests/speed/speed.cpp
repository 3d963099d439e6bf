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

/// What a benchmark took for each of a figure's components.
void perComponent(benchmark::State& state) {
    state.counters["each_component"] = benchmark::Counter(
        static_cast<double>(kComponentCount),
        benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

void nestedPlainPass(benchmark::State& state) {
    const Dossier dossier = nestedDossier(state.range(0) == 1);
    const Cooked cooked = cookedOrExit(dossier);
    const auto figures = figuresPer(Basis::Portion, dossier, cooked);
    const PlainPass pass{figures->block, cooked.compositions};
    for (auto _ : state) benchmark::DoNotOptimize(pass.squares());
    state.counters["numbers"] = static_cast<double>(pass.numbers());
    state.counters["leaves"] = static_cast<double>(cooked.eaten.leaves.size());
}

/// Two levels of kept recipes flattened, and the figures with their budget; compositions at hand.
void nested(benchmark::State& state) {
    const Dossier dossier = nestedDossier(state.range(0) == 1);
    Cooked cooked = cookedOrExit(dossier);
    for (auto _ : state) {
        cooked = std::move(*cook(dossier, std::move(cooked.compositions)));
        benchmark::DoNotOptimize(figuresPer(Basis::Portion, dossier, cooked));
    }
    perComponent(state);
}

/// The same, and every source's part in every component.
void nestedWithParts(benchmark::State& state) {
    const Dossier dossier = nestedDossier(state.range(0) == 1);
    Cooked cooked = cookedOrExit(dossier);
    for (auto _ : state) {
        cooked = std::move(*cook(dossier, std::move(cooked.compositions)));
        const auto figures = figuresPer(Basis::Portion, dossier, cooked);
        for (const ComponentFacts& facts : allComponents())
            benchmark::DoNotOptimize(
                contributionsTo(facts.component, figures->block, cooked.compositions));
    }
    perComponent(state);
}

void nestedOnlyGrams(benchmark::State& state) {
    const Dossier dossier = nestedDossier(state.range(0) == 1);
    for (auto _ : state) {
        std::vector<LineReport> report;
        benchmark::DoNotOptimize(eatenOf(dossier, 0, report));
    }
}

void nestedOnlyBlock(benchmark::State& state) {
    const Dossier dossier = nestedDossier(state.range(0) == 1);
    const Cooked cooked = cookedOrExit(dossier);
    for (auto _ : state) benchmark::DoNotOptimize(batchBlock(cooked.eaten, cooked.compositions));
}

void nestedOnlyFigures(benchmark::State& state) {
    const Dossier dossier = nestedDossier(state.range(0) == 1);
    const Cooked cooked = cookedOrExit(dossier);
    for (auto _ : state) benchmark::DoNotOptimize(figuresPer(Basis::Portion, dossier, cooked));
    perComponent(state);
}

BENCHMARK(plainPass)->Arg(40)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(recompute)->Arg(40)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(keystroke)->Arg(40)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(onlyGrams)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(onlyCompositions)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(onlyBlock)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(onlyFigures)->Arg(40)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(nestedPlainPass)->ArgName("weighed")->Arg(1)->Arg(0)->Unit(benchmark::kMicrosecond);
BENCHMARK(nested)->ArgName("weighed")->Arg(1)->Arg(0)->Unit(benchmark::kMicrosecond);
BENCHMARK(nestedWithParts)->ArgName("weighed")->Arg(1)->Arg(0)->Unit(benchmark::kMicrosecond);
BENCHMARK(nestedOnlyGrams)->ArgName("weighed")->Arg(1)->Arg(0)->Unit(benchmark::kMicrosecond);
BENCHMARK(nestedOnlyBlock)->ArgName("weighed")->Arg(1)->Arg(0)->Unit(benchmark::kMicrosecond);
BENCHMARK(nestedOnlyFigures)->ArgName("weighed")->Arg(1)->Arg(0)->Unit(benchmark::kMicrosecond);

/// Keeps the processor times to compare them at the end of the run.
class RatioReporter : public benchmark::ConsoleReporter {
public:
    RatioReporter() : ConsoleReporter{OO_Tabular} {}

    void ReportRuns(const std::vector<Run>& runs) override {
        for (const Run& run : runs) times_[run.benchmark_name()] = run.GetAdjustedCPUTime();
        ConsoleReporter::ReportRuns(runs);
    }

    void printRatio(const std::string& what, const std::string& plainPass) const {
        const auto plain = times_.find(plainPass);
        const auto whole = times_.find(what);
        if (plain == times_.end() || whole == times_.end()) return;
        std::printf("%s is %.1f times its plain pass\n", what.c_str(),
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
        for (const char* lines : {"/40", "/60"})
            reporter.printRatio(std::string{what} + lines, std::string{"plainPass"} + lines);
    for (const char* what : {"nested", "nestedWithParts", "nestedOnlyFigures"})
        for (const char* weighed : {"/weighed:1", "/weighed:0"})
            reporter.printRatio(std::string{what} + weighed,
                                std::string{"nestedPlainPass"} + weighed);
}
