#include "core/edit/weighing_edits.h"

#include <catch2/catch.hpp>

#include "core/edit/line_edits.h"
#include "core/edit/place.h"
#include "core/recipe/read_recipe.h"
#include "demo.h"
#include "json_edit.h"

using namespace nettare;

namespace {

struct Bench {
    Json document = demo::skewers();

    Bench& make(const Result<Edit>& edit) {
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

constexpr auto kUuid = "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2";

RecordedReading inTheBowl(ReadingPurpose purpose, std::string id = kUuid) {
    RecordedReading recorded;
    recorded.gross = {std::move(id), "pocket", *Decimal::read("216.8"), WeighedState::EdiblePortion,
                      "2026-05-16T17:41:07Z"};
    recorded.tare = std::string{"steel-bowl"};
    recorded.purpose = std::move(purpose);
    return recorded;
}

}  // namespace

TEST_CASE("a reading binds to its line and keeps what the scale showed", "[edit]") {
    Bench bench;
    bench.make(recordReading(bench.document, inTheBowl(ForLine{"garlic"})));
    CHECK(bench.at("/lines/garlic/weighed") == "[\"" + std::string{kUuid} + "\"]");
    CHECK(bench.at(std::string{"/indications/"} + kUuid) ==
          R"({"at":"2026-05-16T17:41:07Z","id":"3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2",)"
          R"("scale":"pocket","shown":"216.8","state":"edible portion"})");
    CHECK(bench.at(std::string{"/readings/"} + kUuid + "/vessel") == R"("steel-bowl")");
    bench.make(recordReading(bench.document, inTheBowl(ForLine{"garlic"}, "second")));
    CHECK(bench.document.find("lines")->items()->at(3).find("weighed")->items()->size() == 2);
    // The cook's own guess gives way to the scale.
    bench.make(recordReading(bench.document, inTheBowl(ForLine{"lemon"}, "third")));
    CHECK(bench.at("/lines/lemon/way") == "nothing");
    CHECK(bench.at("/lines/lemon/assumed") != "nothing");
}

TEST_CASE("what is weighed again takes the place of what was weighed before", "[edit]") {
    Bench bench;
    const auto more = setLineAmount(bench.document, "oil", "4");
    REQUIRE(more);
    bench.make(more->edit);
    RecordedReading again = inTheBowl(ForLine{"oil"}, "oil-again");
    again.instead = true;
    bench.make(recordReading(bench.document, again));
    CHECK(bench.at("/lines/oil/weighed") == R"(["oil-again"])");
    CHECK(bench.at("/lines/oil/weighed_for") == "nothing");
    CHECK(bench.at("/readings/oil") != "nothing");
    RecordedReading dish = inTheBowl(ForCooked{}, "dish-again");
    dish.instead = true;
    bench.make(recordReading(bench.document, dish));
    CHECK(bench.at("/cooked/readings") == R"(["dish-again"])");
    RecordedReading first = inTheBowl(ForLeftOver{{"garlic"}}, "left");
    bench.make(recordReading(bench.document, first));
    RecordedReading second = inTheBowl(ForLeftOver{{"garlic"}}, "left-again");
    second.instead = true;
    bench.make(recordReading(bench.document, second));
    const Json::Array& residues = *bench.document.find("residues")->items();
    CHECK(writeJson(*residues.back().find("readings")) == R"(["left-again"])");
    RecordedReading clove = inTheBowl(ForSeries{"garlic"}, "clove");
    bench.make(recordReading(bench.document, clove));
    clove.gross.id = "next-clove";
    clove.instead = true;
    bench.make(recordReading(bench.document, clove));
    CHECK(valueAt(bench.document, "/series/garlic/readings")->items()->size() == 2);
}

TEST_CASE("a tare that was shown is kept, and used again where it is there", "[edit]") {
    Bench bench;
    RecordedReading recorded = inTheBowl(ForLine{"garlic"});
    const RecordedIndication empty{"cup-empty", "pocket", *Decimal::read("100.0"),
                                   WeighedState::Empty, ""};
    recorded.tare = empty;
    recorded.pieces = 2;
    bench.make(recordReading(bench.document, recorded));
    CHECK(bench.at("/indications/cup-empty/state") == R"("empty")");
    CHECK(bench.at(std::string{"/readings/"} + kUuid + "/pieces") == R"("2")");
    const std::size_t count = bench.document.find("indications")->items()->size();
    recorded.gross.id = "again";
    bench.make(recordReading(bench.document, recorded));
    CHECK(bench.document.find("indications")->items()->size() == count + 1);
}

TEST_CASE("a new scale and a new bowl come with their first reading", "[edit]") {
    Bench bench;
    bench.document.remove("scales");
    bench.document.remove("vessels");
    RecordedReading recorded = inTheBowl(ForLine{"salt"});
    recorded.gross.scale = "fine";
    recorded.tare = std::string{"cup"};
    recorded.scales = {{"fine", "fine scale", "g", *Decimal::read("0.01"), {}}};
    recorded.vessels = {{"cup", "cup", "fine", *Decimal::read("12.50")}};
    bench.make(recordReading(bench.document, recorded));
    CHECK(bench.at("/scales") ==
          R"([{"id":"fine","name":"fine scale","readability":"0.01","unit":"g"}])");
    CHECK(bench.at("/vessels/cup/tare") == R"("12.50")");
}

TEST_CASE("single pieces make a series for the line, which the next ones join", "[edit]") {
    Bench bench;
    bench.make(recordReading(bench.document, inTheBowl(ForSeries{"garlic", "", "peeled cloves"})));
    CHECK(bench.at("/lines/garlic/series") == R"({"id":"peeled-cloves","use":"others"})");
    CHECK(bench.at("/series/peeled-cloves/of") == R"("clove")");
    CHECK(bench.at("/series/peeled-cloves/kind") == R"("per piece")");
    bench.make(recordReading(bench.document, inTheBowl(ForSeries{"garlic"}, "second")));
    CHECK(valueAt(bench.document, "/series/peeled-cloves/readings")->items()->size() == 2);
    bench.make(recordReading(bench.document, inTheBowl(ForSeries{"paprika"}, "spoon")));
    CHECK(bench.at("/series/smoked-paprika/kind") == R"("per measure")");
    CHECK(bench.at("/series/smoked-paprika/of") == R"("tsp")");
    CHECK_FALSE(recordReading(bench.document, inTheBowl(ForSeries{"garlic", "x"}, "third")));
}

TEST_CASE("the dish, what is not eaten of it and what is left over are weighed", "[edit]") {
    Bench bench;
    bench.make(recordReading(bench.document, inTheBowl(ForCooked{}, "second-dish")));
    CHECK(bench.at("/cooked/readings") == R"(["dish","second-dish"])");
    bench.make(recordReading(bench.document, inTheBowl(ForNotEaten{}, "shells")));
    CHECK(bench.at("/cooked/not_eaten") == R"(["sticks","shells"])");
    const ForLeftOver marinade{{"oil", "garlic", "lemon", "paprika", "salt"}};
    bench.make(recordReading(bench.document, inTheBowl(marinade, "brush")));
    CHECK(bench.at("/residues/0/readings") == R"(["marinade-left","brush"])");
    bench.make(recordReading(bench.document, inTheBowl(ForLeftOver{{"oil"}}, "bottle")));
    CHECK(bench.at("/residues/1") == R"({"line":"oil","readings":["bottle"]})");
    bench.make(recordReading(bench.document, inTheBowl(ForLeftOver{}, "plate")));
    CHECK(bench.at("/residues/2") == R"({"readings":["plate"],"unknown":true})");
    bench.document.remove("cooked");
    const auto early = recordReading(bench.document, inTheBowl(ForNotEaten{}, "bones"));
    REQUIRE_FALSE(early);
    CHECK(early.error().code == ErrorCode::CookedWeightMissing);
    bench.make(recordReading(bench.document, inTheBowl(ForCooked{}, "first-dish")));
    CHECK(bench.at("/cooked") == R"({"readings":["first-dish"]})");
}

TEST_CASE("a reading that cannot be placed is refused", "[edit]") {
    const Json document = demo::skewers();
    const auto code = [&](const RecordedReading& recorded) {
        const auto edit = recordReading(document, recorded);
        REQUIRE_FALSE(edit);
        return edit.error().code;
    };
    CHECK(code(inTheBowl(ForLine{"water"})) == ErrorCode::UnknownReference);
    CHECK(code(inTheBowl(ForLeftOver{{"oil", "water"}})) == ErrorCode::UnknownReference);
    CHECK(code(inTheBowl(ForLine{"oil"}, "oil")) == ErrorCode::DuplicateId);
    RecordedReading lost = inTheBowl(ForLine{"oil"});
    lost.tare = std::string{"bucket"};
    CHECK(code(lost) == ErrorCode::UnknownReference);
    lost = inTheBowl(ForLine{"oil"});
    lost.gross.scale = "bathroom";
    CHECK(code(lost) == ErrorCode::UnknownReference);
    CHECK(code(inTheBowl(ForLine{"oil"}, "Not An Id")) == ErrorCode::NotAnIdentifier);
    RecordedReading many = inTheBowl(ForLine{"oil"});
    many.pieces = 10'000;
    CHECK(code(many) == ErrorCode::OutOfRange);
}

TEST_CASE("a reading comes off what it was bound to and stays", "[edit]") {
    Bench bench;
    bench.make(setLineAmount(bench.document, "oil", "4")->edit);
    bench.make(unbindReading(bench.document, "oil"));
    CHECK(bench.at("/lines/oil/weighed") == "nothing");
    CHECK(bench.at("/lines/oil/weighed_for") == "nothing");
    CHECK(bench.at("/readings/oil") != "nothing");
    bench.make(unbindReading(bench.document, "marinade-left"));
    CHECK(bench.at("/residues") == "nothing");
    bench.make(unbindReading(bench.document, "sticks"));
    CHECK(bench.at("/cooked") == R"({"readings":["dish"]})");
    bench.make(unbindReading(bench.document, "dish"));
    CHECK(bench.at("/cooked") == "nothing");
    for (int i = 1; i <= 5; ++i)
        bench.make(unbindReading(bench.document, "prawn-" + std::to_string(i)));
    CHECK(bench.at("/series/prawn-meat/readings") == R"(["prawn-6"])");
    bench.make(unbindReading(bench.document, "prawn-6"));
    CHECK(bench.at("/series") == "nothing");
    CHECK(bench.at("/lines/prawns/series") == "nothing");
    CHECK_FALSE(unbindReading(bench.document, "spoon"));
}

TEST_CASE("each weighing of another test cook is a cook of its own", "[edit]") {
    Bench bench;
    bench.make(recordReading(bench.document, inTheBowl(ForOtherCook{}, "cook-2")));
    bench.make(recordReading(bench.document, inTheBowl(ForOtherCook{}, "cook-3")));
    CHECK(bench.at("/cooked/other_cooks") ==
          R"([{"readings":["cook-2"]},{"readings":["cook-3"]}])");
    bench.make(unbindReading(bench.document, "cook-2"));
    CHECK(bench.at("/cooked/other_cooks") == R"([{"readings":["cook-3"]}])");
    bench.make(unbindReading(bench.document, "cook-3"));
    CHECK(bench.at("/cooked/other_cooks") == "nothing");
    Bench raw;
    raw.document.remove("cooked");
    CHECK(recordReading(raw.document, inTheBowl(ForOtherCook{})).error().code ==
          ErrorCode::CookedWeightMissing);
}

TEST_CASE("finished pieces make a series of their own", "[edit]") {
    Bench bench;
    bench.make(recordReading(bench.document, inTheBowl(ForFinishedPiece{}, "one")));
    CHECK(bench.at("/makes/weighed") == R"("skewers")");
    bench.make(recordReading(bench.document, inTheBowl(ForFinishedPiece{}, "two")));
    CHECK(bench.at("/series/skewers/readings") == R"(["one","two"])");
    CHECK(bench.at("/series/skewers/of") == R"("skewer")");
    bench.make(unbindReading(bench.document, "one"));
    bench.make(unbindReading(bench.document, "two"));
    CHECK(bench.at("/makes/weighed") == "nothing");
    CHECK(bench.at("/series/skewers") == "nothing");
}
