#include <benchmark/benchmark.h>

#include <array>
#include <string_view>

#include "core/support/text.h"
#include "core/wording/read_line.h"
#include "core/wording/write_line.h"

// How long an ingredient line takes to be read and written, beside a pass that does no more than
// put the same line into lower case and split it into words.

namespace nettare {
namespace {

constexpr std::array<std::string_view, 12> kLines{
    "1/3 cup tahini, stirred",
    "1 (14.5 oz) can tomatoes, drained",
    "2 large eggs, lightly beaten",
    "salt and freshly ground black pepper, to taste",
    "4 boneless, skinless chicken thighs (about 150 g each), cut into 2 cm pieces",
    "juice and finely grated zest of half an unwaxed lemon",
    "120 g/4 oz plain flour, plus extra for dusting",
    "2–3 cloves garlic, crushed",
    "1 cup plus 2 tbsp sugar",
    "a few sprigs of thyme",
    "2 x 400 g tins chickpeas, drained and rinsed",
    "1 tbsp olive or vegetable oil (optional)",
};

/// One run is all lines; the counter tells the time of one.
void perLine(benchmark::State& state) {
    state.counters["s_each"] = benchmark::Counter(
        static_cast<double>(kLines.size()),
        benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

void splitLines(benchmark::State& state) {
    for (auto _ : state)
        for (const std::string_view line : kLines) {
            const std::string lower = lowerAscii(line);
            benchmark::DoNotOptimize(words(lower));
        }
    perLine(state);
}

void readLines(benchmark::State& state) {
    for (auto _ : state)
        for (const std::string_view line : kLines) benchmark::DoNotOptimize(readLine(line));
    perLine(state);
}

void readAndWriteLines(benchmark::State& state) {
    for (auto _ : state)
        for (const std::string_view line : kLines)
            benchmark::DoNotOptimize(writeLine(readLine(line)));
    perLine(state);
}

BENCHMARK(splitLines)->Unit(benchmark::kMicrosecond);
BENCHMARK(readLines)->Unit(benchmark::kMicrosecond);
BENCHMARK(readAndWriteLines)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace nettare
