#include <catch2/catch.hpp>

#include "app/files/share_folder.h"
#include "app/kitchen/draft_document.h"
#include "app/kitchen/sample.h"
#include "app/loading/closure.h"
#include "core/nutrition/target.h"
#include "support/scratch_folder.h"

using namespace nettare;

namespace {

const std::string kDemoFolder = NETTARE_RESOURCES "/demo";
const std::string kSkewersId = "charred-prawn-fennel-skewers";
const std::string kPattiesId = "barley-beetroot-patties";

std::string tablePath() {
    return shareFolder() + "/starter.table";
}

Kitchen built() {
    DossierLoader loader{tablePath()};
    auto kitchen = buildSample(kDemoFolder, loader);
    REQUIRE(kitchen);
    return std::move(*kitchen);
}

Kitchen opened() {
    auto kitchen = openSample();
    REQUIRE(kitchen);
    return std::move(*kitchen);
}

/// The verdicts of a revision, with the foods it pinned.
std::vector<TargetVerdict> verdicts(const Kitchen& kitchen, const std::string& recipe, int number) {
    const auto kept = kitchen.revision(recipe, number);
    REQUIRE(kept);
    const auto closure = closureOfRevision(kitchen, *kept);
    REQUIRE(closure);
    const auto dossier = dossierOf(kept->document, recipe, *closure);
    REQUIRE(dossier);
    const auto cooked = cook(*dossier);
    REQUIRE(cooked);
    const auto all = verdictsOf(*dossier, *cooked);
    REQUIRE(all);
    return *all;
}

Json parsedDemo(const std::string& name) {
    auto json = parseJson(bytesOf(kDemoFolder + "/" + name));
    REQUIRE(json);
    return std::move(*json);
}

}  // namespace

TEST_CASE("the sample kitchen is whole", "[sample]") {
    const Kitchen sample = opened();
    CHECK(sample.path().empty());
    CHECK(sample.writable());
    const auto check = sample.verify();
    REQUIRE(check);
    CHECK(check->faults.empty());
    CHECK(check->recipes == 2);
    CHECK(check->revisions == 5);
    CHECK(check->ledgerEntries == 60);
}

TEST_CASE("every build of the sample gives the same revisions, figures and ledger", "[sample]") {
    const Kitchen one = built();
    const Kitchen other = built();
    const Kitchen shipped = opened();
    for (const Kitchen* again : {&other, &shipped}) {
        CHECK(again->verify()->ledgerHead == one.verify()->ledgerHead);
        for (const auto& [recipe, count] : {std::pair{kSkewersId, 3}, std::pair{kPattiesId, 2}})
            for (int number = 1; number <= count; ++number) {
                const auto a = one.revision(recipe, number);
                const auto b = again->revision(recipe, number);
                REQUIRE(a);
                REQUIRE(b);
                CHECK(a->summary.hash == b->summary.hash);
                CHECK(a->summary.at == b->summary.at);
                CHECK(writeJson(a->figures) == writeJson(b->figures));
                CHECK(a->ledgerHead == b->ledgerHead);
            }
    }
}

TEST_CASE("one dish of the sample is in work and one is proven", "[sample]") {
    const auto shelf = opened().recipes();
    REQUIRE(shelf);
    REQUIRE(shelf->size() == 2);
    CHECK(shelf->front().id == kPattiesId);
    CHECK_FALSE(shelf->front().inWork);
    CHECK(shelf->back().id == kSkewersId);
    CHECK(shelf->back().inWork);
    const auto draft = opened().draft(kSkewersId);
    CHECK(draft->baseRevision == 3);
    CHECK(draft->cursor == 1);
    const auto document = documentOf(*draft);
    REQUIRE(document);
    CHECK(document->find("steps")->items()->front().find("text")->text()->ends_with(
        "let it stand for ten minutes."));
}

TEST_CASE("the newest revisions of the sample are the example documents", "[sample]") {
    const Kitchen sample = opened();
    CHECK(sample.revision(kSkewersId, 3)->document == parsedDemo("prawn-fennel-skewers.json"));
    CHECK(sample.revision(kPattiesId, 2)->document == parsedDemo("barley-beetroot-patties.json"));
    CHECK(sample.revision(kSkewersId, 3)->summary.parent == 2);
    CHECK(sample.revision(kSkewersId, 1)->summary.parent == std::nullopt);
}

TEST_CASE("the notes of the sample say what its figures are", "[sample]") {
    const Kitchen sample = opened();
    const std::tuple<std::string, int, TargetState, std::string> cases[] = {
        {kSkewersId, 1, TargetState::NotMet, "165 kcal"},
        {kSkewersId, 2, TargetState::NotMet, "153 kcal"},
        {kSkewersId, 3, TargetState::ValueOnly, "144 kcal"},
        {kPattiesId, 1, TargetState::NotMet, "9.3 g of protein"},
        {kPattiesId, 2, TargetState::ValueOnly, "11.7 g of protein"},
    };
    for (const auto& [recipe, number, state, figure] : cases) {
        INFO(recipe << " " << number);
        const TargetVerdict last = verdicts(sample, recipe, number).back();
        CHECK(last.state == state);
        CHECK(sample.revision(recipe, number)->summary.note.find(figure) != std::string::npos);
        const ComponentFacts& facts = factsOf(last.target.component);
        const double printed = std::stod(figure);
        CHECK(std::abs(last.figure.value - printed) <= (facts.decimals == 0 ? 0.5 : 0.05));
    }
}
