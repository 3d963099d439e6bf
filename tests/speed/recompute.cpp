#include <benchmark/benchmark.h>

#include "core/nutrition/figures.h"
#include "generated_recipe.h"

using namespace nettare;

namespace {

/// What a keystroke costs: grams of all lines, sums, budget of all components, one basis.
void recompute(benchmark::State& state) {
    const Dossier dossier = speed::generatedDossier(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) {
        const auto cooked = cook(dossier);
        const auto figures = figuresPer(Basis::Portion, dossier, *cooked);
        benchmark::DoNotOptimize(figures->figures);
    }
}

/// The yardstick: one plain pass over the same sensitivities, u^2 = sum (c u)^2.
void plainPass(benchmark::State& state) {
    const Dossier dossier = speed::generatedDossier(static_cast<std::size_t>(state.range(0)));
    const auto cooked = cook(dossier);
    std::vector<double> sensitivities;
    std::vector<double> uncertainties;
    for (const ComponentFacts& facts : allComponents())
        for (const Contribution& part :
             contributionsTo(facts.component, cooked->batch, cooked->compositions)) {
            sensitivities.push_back(part.sensitivity);
            uncertainties.push_back(part.source.u);
        }
    for (auto _ : state) {
        double squares = 0;
        for (std::size_t i = 0; i < sensitivities.size(); ++i) {
            const double part = sensitivities[i] * uncertainties[i];
            squares += part * part;
        }
        benchmark::DoNotOptimize(squares);
    }
    state.counters["sensitivities"] = static_cast<double>(sensitivities.size());
}

}  // namespace

BENCHMARK(plainPass)->Arg(40)->Arg(60)->Unit(benchmark::kMicrosecond);
BENCHMARK(recompute)->Arg(40)->Arg(60)->Unit(benchmark::kMicrosecond);

BENCHMARK_MAIN();
