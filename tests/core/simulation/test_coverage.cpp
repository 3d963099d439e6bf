#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <iostream>

#include "core/simulation/figure_model.h"
#include "coverage_kitchens.h"

using namespace nettare;

// How often the true value lies in the interval, by kitchens whose truth is known. 2,000 kitchens a
// stratum of which a tenth is simulated, or as many as NETTARE_KITCHENS says, all simulated: 20,000
// in the slow stage.
//
// The worst is "2 readings, dominated by series": two pods that happen to be alike give a small s,
// and Welch-Satterthwaite then takes its freedom from the table. Propagation alone holds the truth
// in 89.5 %, with three readings in 93.7 %; what is shown there is the simulated interval.

namespace {

constexpr int kReadings[] = {2, 3, 5, 20};
constexpr Dominated kDominated[] = {Dominated::BySeries, Dominated::ByTable, Dominated::ByLabel};

int kitchensAStratum() {
    const char* number = std::getenv("NETTARE_KITCHENS");
    return number == nullptr ? 2'000 : std::atoi(number);
}

/// Two and a half standard deviations of a coverage of 95 % that is counted.
double countingMargin(int kitchens) {
    return 2.5 * std::sqrt(0.95 * 0.05 / kitchens);
}

struct Coverage {
    std::string stratum;
    bool normal = true;    ///< no rectangle of weight
    bool fewRule = false;  ///< two or three readings make most of the variance
    double ofPropagation = 0;
    double ofSimulation = 0;
    double ofShown = 0;  ///< the simulated one where there is a reason to simulate
};

bool covers(const FigureInterval& interval, double truth) {
    return interval.low <= truth && truth <= *interval.high;
}

FigureInterval simulatedInterval(const Figures& figures, const Dossier& dossier,
                                 const Cooked& cooked, std::uint32_t seed) {
    SimulationPlan plan;
    plan.trials = 2'560;
    plan.seed = seed;
    plan.threads = 1;
    const auto simulation = simulate(plan, figureModel(Component::NA, figures, dossier, cooked));
    return intervalOf(figures[Component::NA], *simulation);
}

/// Counts over kitchens, and over those of them that were simulated.
class Counts {
public:
    void addPropagated(bool covered) { propagated_ += covered ? 1 : 0; }
    void addSimulated(bool covered, bool shown) {
        simulated_ += covered ? 1 : 0;
        shown_ += shown ? 1 : 0;
    }
    void putInto(Coverage& found, int kitchens, int simulatedKitchens) const {
        found.ofPropagation = static_cast<double>(propagated_) / kitchens;
        found.ofSimulation = static_cast<double>(simulated_) / simulatedKitchens;
        found.ofShown = static_cast<double>(shown_) / simulatedKitchens;
    }

private:
    int propagated_ = 0, simulated_ = 0, shown_ = 0;
};

Coverage coverageOf(Dominated dominated, int readings, int kitchens, int simulatedKitchens) {
    CoverageKitchens stratum{dominated, readings, 20261126};
    Counts counts;
    for (int i = 0; i < kitchens; ++i) {
        const Dossier& dossier = stratum.next();
        const Cooked cooked = *cook(dossier);
        const Figures figures = *figuresPer(Basis::Batch, dossier, cooked);
        const bool covered = covers(intervalOf(figures[Component::NA]), stratum.truth());
        counts.addPropagated(covered);
        if (i >= simulatedKitchens) continue;
        const bool simulated =
            covers(simulatedInterval(figures, dossier, cooked, static_cast<std::uint32_t>(i)),
                   stratum.truth());
        const bool reason = reasonToSimulate(Component::NA, figures, cooked).has_value();
        counts.addSimulated(simulated, reason ? simulated : covered);
    }
    Coverage found;
    found.stratum = std::to_string(readings) + " readings, dominated by " + nameOf(dominated);
    found.normal = dominated != Dominated::ByLabel;
    found.fewRule = dominated == Dominated::BySeries && readings <= 3;
    counts.putInto(found, kitchens, simulatedKitchens);
    return found;
}

std::vector<Coverage> coverageOfAll(int kitchens, int simulatedKitchens) {
    std::vector<Coverage> all;
    for (const Dominated dominated : kDominated)
        for (const int readings : kReadings)
            all.push_back(coverageOf(dominated, readings, kitchens, simulatedKitchens));
    return all;
}

}  // namespace

TEST_CASE("95 % intervals hold the truth as often as they say", "[coverage]") {
    const int kitchens = kitchensAStratum();
    const int simulatedKitchens = kitchens >= 20'000 ? kitchens : kitchens / 10;
    const double margin = countingMargin(kitchens);
    const double simulatedMargin = countingMargin(simulatedKitchens);
    for (const Coverage& found : coverageOfAll(kitchens, simulatedKitchens)) {
        CAPTURE(found.stratum, found.ofPropagation, found.ofSimulation, found.ofShown);
        if (kitchens >= 20'000)
            std::cout << found.stratum << ": " << 100 * found.ofPropagation << " %, simulated "
                      << 100 * found.ofSimulation << " %, shown " << 100 * found.ofShown << " %\n";
        CHECK(found.ofSimulation >= 0.94 - simulatedMargin);
        CHECK(found.ofShown >= (found.normal ? 0.94 : 0.925) - simulatedMargin);
        if (found.fewRule) continue;
        CHECK(found.ofPropagation >= (found.normal ? 0.94 : 0.925) - margin);
        if (found.normal) CHECK(found.ofPropagation <= 0.96 + margin);
    }
}
