#include "core/publish/path_check.h"

#include <catch2/catch.hpp>

#include "kitchen.h"

using namespace nettare;
using Catch::Matchers::Contains;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

std::string checkOf(const Kitchen& kitchen, bool simulated) {
    const Served served{kitchen};
    const auto figures = Served::orThrow(figuresPer(Basis::Portion, served.dossier, served.cooked));
    std::optional<Simulation> simulation;
    if (simulated)
        simulation = simulate({20'000, 1, 2, {}}, figureModel(Component::ENERC_KCAL, figures,
                                                              served.dossier, served.cooked));
    return Served::orThrow(
        pathCheckText(Component::ENERC_KCAL, figures, served.dossier, served.cooked, simulation));
}

/// 40 g of oil, give or take 10: 884 kcal in 100 g and a fifth of the batch, so 70.7 kcal with
/// u = 10.2.
Kitchen guessed() {
    return Kitchen{}.line(R"({"id":"o","amount":"1","piece":"splash","food":"oil",)"
                          R"("assumed":{"grams":"40","within":"10","reason":"by eye"}})");
}

}  // namespace

TEST_CASE("below a path stands what makes its interval and what to weigh", "[path]") {
    const std::string text = checkOf(guessed(), false);
    CHECK_THAT(text, Contains("What makes it ± 20"));
    CHECK_THAT(text, Contains("100 %  "));
    CHECK_THAT(text, Contains("Next: "));
    CHECK_THAT(text, Contains("would narrow ± "));
    CHECK_THAT(text, !Contains("Checked another way"));
}

// A rectangle of 40 +- 10 g holds 95 % within 30.5 to 49.5 g: 53.9 to 87.5 kcal a portion.
TEST_CASE("where one guess rules, the simulated interval is the one to publish", "[path]") {
    const std::string text = checkOf(guessed(), true);
    CHECK_THAT(text, Contains("20\u202f000 simulated batches: 53 to 88 kcal in 95 % of them."));
    CHECK_THAT(text, Contains("The law of propagation says 50 to 91 kcal."));
    CHECK_THAT(text, Contains("is the one to publish: one source that may lie anywhere"));
}

TEST_CASE("an exact figure has nothing to be made of", "[path]") {
    Kitchen exact = Kitchen{};
    exact.append("foods", R"({"id":"x","name":"x","stated":[{"component":"ENERC_KCAL",)"
                          R"("per_100g":"100","within":"0","reason":"invented"}]})");
    exact.line(R"({"id":"l","amount":"1","piece":"x","food":"x",)"
               R"("assumed":{"grams":"100","within":"0","reason":"invented"}})");
    CHECK(checkOf(exact, false).empty());
}
