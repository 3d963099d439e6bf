#include "core/publish/comparison.h"

#include <catch2/catch.hpp>

#include "compared_kitchens.h"

using namespace kitchen;

namespace {

std::string changesOf(const Comparison& comparison) {
    std::string text;
    for (const ComparedLine& line : comparison.lines) {
        const char* mark = line.change == LineChange::Same      ? "="
                           : line.change == LineChange::Changed ? "~"
                           : line.change == LineChange::Added   ? "+"
                                                                : "-";
        text += mark + (line.after ? line.after->id : line.before->id) + " ";
    }
    return text;
}

Kitchen fennelAnd(const std::vector<std::string>& lines) {
    Kitchen kitchen;
    for (const std::string& line : lines) kitchen.line(line);
    return kitchen;
}

const std::string kFennel = R"({"id":"fennel","amount":"2","piece":"bulb","food":"fennel"})";
const std::string kOil = R"({"id":"oil","amount":"3","unit":"tbsp","food":"oil"})";
const std::string kSugar = R"({"id":"sugar","amount":"1","unit":"tsp","food":"sugar"})";

}  // namespace

TEST_CASE("a state beside itself has no difference and no uncertainty of one", "[publish]") {
    Kitchen kitchen = dish("3", "7");
    kitchen.reading("dish", "400", "", "cooked").json("cooked", R"({"readings":["dish"]})");
    const Comparison comparison = comparedKitchens(kitchen, kitchen);
    CHECK(changesOf(comparison) == "=oil =sugar =fennel ");
    for (const FigureDifference& found : comparison.figures) {
        INFO(factsOf(found.before.component).tagname);
        CHECK(found.difference == 0);
        CHECK(found.u == 0);
        CHECK(found.halfWidth == 0);
        CHECK(found.kind ==
              (found.before.complete() ? DifferenceKind::None : DifferenceKind::NotComparable));
    }
    CHECK(comparison.gramsBefore == comparison.gramsAfter);
    CHECK(comparison.batchEnergy.u == 0);
    for (const StepDifference& step : comparison.method) {
        REQUIRE(step.runs.size() == 1);
        CHECK(step.runs[0].kind == WordsKind::Kept);
    }
}

TEST_CASE("removed lines stand where they stood, and lines of one food belong together",
          "[publish]") {
    const std::string lessOil = R"({"id":"fat","amount":"2","unit":"tbsp","food":"oil"})";
    CHECK(changesOf(comparedKitchens(fennelAnd({kFennel, kOil, kSugar}),
                                     fennelAnd({kFennel, kSugar}))) == "=fennel -oil =sugar ");
    CHECK(changesOf(
              comparedKitchens(fennelAnd({kFennel, kSugar}), fennelAnd({kFennel, kOil, kSugar}))) ==
          "=fennel +oil =sugar ");
    CHECK(changesOf(comparedKitchens(fennelAnd({kFennel, kOil}), fennelAnd({lessOil, kFennel}))) ==
          "~fat =fennel ");
    CHECK(changesOf(comparedKitchens(fennelAnd({kOil, kSugar, kFennel}), fennelAnd({kFennel}))) ==
          "-oil -sugar =fennel ");
}

TEST_CASE("the totals of two states differ by what their lines differ", "[publish]") {
    const Comparison comparison = comparedKitchens(dish("3", "7"), dish("4", "2"));
    double grams = 0;
    double kcal = 0;
    for (const ComparedLine& line : comparison.lines) {
        grams += line.gramsDifference;
        kcal += line.kcalDifference;
    }
    CHECK(comparison.gramsAfter - comparison.gramsBefore == Approx(grams));
    CHECK(comparison.batchEnergy.difference == Approx(kcal));
    CHECK(comparison.lines[0].gramsDifference == Approx(13.5));
}

TEST_CASE("the order of lines changes nothing in a comparison", "[publish]") {
    const auto one = comparedKitchens(fennelAnd({kFennel, kOil}), fennelAnd({kFennel, kSugar}));
    const auto other = comparedKitchens(fennelAnd({kOil, kFennel}), fennelAnd({kSugar, kFennel}));
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        CHECK(one.figures[k].difference == other.figures[k].difference);
        CHECK(one.figures[k].u == other.figures[k].u);
        CHECK(one.figures[k].freedom == other.figures[k].freedom);
    }
}

TEST_CASE("a ceiling that was missed and is met says by how much it was missed", "[publish]") {
    const Comparison comparison = comparedKitchens(dish("5", "7"), dish("2", "7"));
    REQUIRE(comparison.targets.size() == 1);
    const TargetChange& change = comparison.targets[0];
    CHECK(change.before->state == TargetState::NotMet);
    CHECK(change.after->state == TargetState::Met);
    CHECK(*missedBy(*change.before) == Approx(*intervalOf(change.before->figure).high - 600));
    CHECK(*missedBy(*change.after) < 0);
}

TEST_CASE("a target of one side only stands alone", "[publish]") {
    Kitchen other = dish("3", "7");
    other.json("targets", R"([{"component":"ENERC_KCAL","per":"batch","at_least":"100"}])");
    const Comparison comparison = comparedKitchens(dish("3", "7"), other);
    REQUIRE(comparison.targets.size() == 2);
    CHECK_FALSE(comparison.targets[0].before);
    CHECK(*missedBy(*comparison.targets[0].after) < 0);
    CHECK_FALSE(comparison.targets[1].after);
}

TEST_CASE("without a cooked weight a portion in grams gives way to the piece", "[publish]") {
    Kitchen grams = dish("3", "7");
    grams.json("portion", R"({"grams":"150"})");
    CHECK(comparedKitchens(grams, dish("3", "7")).basis == Basis::Piece);
    CHECK(comparedKitchens(dish("3", "7"), dish("3", "7")).basis == Basis::Portion);
}
