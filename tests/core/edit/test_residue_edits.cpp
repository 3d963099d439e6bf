#include "core/edit/residue_edits.h"

#include <catch2/catch.hpp>

#include "core/edit/counting_edits.h"
#include "core/edit/place.h"
#include "core/edit/step_edits.h"
#include "core/edit/weighing_edits.h"
#include "core/recipe/read_recipe.h"
#include "demo.h"

using namespace nettare;

namespace {

struct Bowl {
    Json document = demo::skewers();

    Bowl& make(const Result<Edit>& edit) {
        REQUIRE(edit);
        const Json before = document;
        document = *applied(document, *edit);
        REQUIRE(readRecipe(document));
        CHECK(*applied(document, inverseOf(*edit)) == before);
        return *this;
    }
    [[nodiscard]] std::string at(const std::string& place) const {
        const Json* value = valueAt(document, place);
        return value == nullptr ? "nothing" : writeJson(*value);
    }
};

ResidueMakeup marinadeLeft() {
    ResidueMakeup makeup = ResidueMakeup::ofLines({"oil", "garlic"});
    makeup.shares = {{"oil", "2/3"}};
    makeup.mixedAt = "2";
    makeup.called = "marinade";
    return makeup;
}

ErrorCode refused(const Result<Edit>& edit) {
    REQUIRE_FALSE(edit);
    return edit.error().code;
}

}  // namespace

TEST_CASE("a residue gets another make-up and keeps its readings", "[edit]") {
    Bowl bowl;
    bowl.make(setResidueMakeup(bowl.document, 0, marinadeLeft()));
    CHECK(bowl.at("/residues/0") ==
          R"({"called":"marinade","mixed_at":"2","mixture":["oil","garlic"],)"
          R"("readings":["marinade-left"],"shares":[{"line":"oil","share":"2/3"}]})");
    bowl.make(setResidueMakeup(bowl.document, 0, {ResidueKind::Water}));
    CHECK(bowl.at("/residues/0") == R"({"readings":["marinade-left"],"water":true})");
    ResidueMakeup drip{ResidueKind::Drip};
    drip.food = "fennel";
    bowl.make(setResidueMakeup(bowl.document, 0, drip));
    CHECK(bowl.at("/residues/0/drip") == R"("fennel")");
}

TEST_CASE("residues come and go, their readings stay", "[edit]") {
    Bowl bowl;
    bowl.make(addResidue(bowl.document, {ResidueKind::NotEaten}, {"sticks"}));
    CHECK(bowl.at("/residues/1") == R"({"not_eaten":true,"readings":["sticks"]})");
    bowl.make(removeResidue(bowl.document, 1)).make(removeResidue(bowl.document, 0));
    CHECK(bowl.at("/residues") == "nothing");
    CHECK(bowl.at("/readings/marinade-left") != "nothing");
}

TEST_CASE("a residue of what is not there is refused", "[edit]") {
    const Json document = demo::skewers();
    ResidueMakeup late = marinadeLeft();
    late.mixedAt = "99";
    CHECK(refused(setResidueMakeup(document, 0, late)) == ErrorCode::UnknownReference);
    late.mixedAt = "two";
    CHECK(refused(setResidueMakeup(document, 0, late)) == ErrorCode::OutOfRange);
    CHECK(refused(setResidueMakeup(document, 7, marinadeLeft())) == ErrorCode::EditDoesNotFit);
    CHECK(refused(removeResidue(document, 7)) == ErrorCode::EditDoesNotFit);
    const auto of = ResidueMakeup::ofLines;
    CHECK(refused(addResidue(document, of({"ash"}), {"sticks"})) == ErrorCode::UnknownReference);
    CHECK(refused(addResidue(document, of({"oil"}), {"none"})) == ErrorCode::UnknownReference);
    CHECK(refused(addResidue(document, of({"oil"}), {})) == ErrorCode::TooFewItems);
    CHECK(refused(addResidue(document, {ResidueKind::Drip}, {"sticks"})) ==
          ErrorCode::UnknownReference);
}

TEST_CASE("a reading of what is left over may say what it is", "[edit]") {
    Bowl bowl;
    RecordedReading recorded;
    recorded.tare = std::string{"steel-bowl"};
    const auto weigh = [&](const char* id, const ResidueMakeup& makeup) {
        recorded.gross = {id, "pocket", *Decimal::read("216.8"), WeighedState::Residue, ""};
        recorded.purpose = ForLeftOver{{}, makeup};
        bowl.make(recordReading(bowl.document, recorded));
    };
    weigh("first", marinadeLeft());
    CHECK(bowl.at("/residues/1/readings") == R"(["first"])");
    // What is of the same make-up adds up.
    weigh("second", marinadeLeft());
    CHECK(bowl.at("/residues/1/readings") == R"(["first","second"])");
    weigh("sink", {ResidueKind::Water});
    CHECK(bowl.at("/residues/2") == R"({"readings":["sink"],"water":true})");
}

TEST_CASE("a share goes with its line", "[edit]") {
    Bowl bowl;
    bowl.make(setResidueMakeup(bowl.document, 0, marinadeLeft()));
    bowl.make(removeLine(bowl.document, "oil")->edit);
    CHECK(bowl.at("/residues/0/mixture") == R"(["garlic"])");
    CHECK(bowl.at("/residues/0/shares") == "nothing");
    bowl.make(removeLine(bowl.document, "garlic")->edit);
    CHECK(bowl.at("/residues") == "nothing");
}

TEST_CASE("what was mixed at a step follows the step", "[edit]") {
    Bowl bowl;
    bowl.make(setResidueMakeup(bowl.document, 0, marinadeLeft()));
    const std::string place = "/residues/0/mixed_at";
    bowl.make(addStep(bowl.document, 2, "Wait."));
    CHECK(bowl.at(place) == R"("2")");
    bowl.make(addStep(bowl.document, 0, "Begin."));
    CHECK(bowl.at(place) == R"("3")");
    bowl.make(moveStep(bowl.document, 2, 0));
    CHECK(bowl.at(place) == R"("1")");
    bowl.make(moveStep(bowl.document, 1, 0));
    CHECK(bowl.at(place) == R"("2")");
    bowl.make(moveStep(bowl.document, 0, 2));
    CHECK(bowl.at(place) == R"("1")");
    bowl.make(addStep(bowl.document, 0, "Begin.")).make(removeStep(bowl.document, 0));
    CHECK(bowl.at(place) == R"("1")");
    bowl.make(removeStep(bowl.document, 0));
    CHECK(bowl.at(place) == "nothing");
}

TEST_CASE("the rules of counting are set by their words", "[edit]") {
    Bowl bowl;
    bowl.make(setCounting(bowl.document, CountingRule::ToTaste, "a pinch a portion"));
    bowl.make(setCounting(bowl.document, CountingRule::Makes, "least"));
    CHECK(bowl.at("/counting") == R"({"makes":"least","to_taste":"a pinch a portion"})");
    bowl.make(setCounting(bowl.document, CountingRule::ToTaste, ""));
    bowl.make(setCounting(bowl.document, CountingRule::Makes, ""));
    CHECK(bowl.at("/counting") == "nothing");
    const auto wrong = setCounting(bowl.document, CountingRule::Optional, "never");
    CHECK(refused(wrong) == ErrorCode::NotOneOf);
    CHECK(wrong.error().pointer == "/counting/optional");
}

TEST_CASE("a line becomes optional and back", "[edit]") {
    Bowl bowl;
    bowl.make(setOptional(bowl.document, "garlic", true)->edit);
    CHECK(bowl.at("/lines/garlic/optional") == "true");
    bowl.make(setOptional(bowl.document, "garlic", false)->edit);
    CHECK(bowl.at("/lines/garlic/optional") == "nothing");
    CHECK(setOptional(bowl.document, "nobody", true).error().code == ErrorCode::UnknownReference);
}
