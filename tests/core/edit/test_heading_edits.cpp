#include "core/edit/heading_edits.h"

#include <catch2/catch.hpp>

#include "core/edit/place.h"
#include "core/edit/step_edits.h"
#include "core/recipe/read_recipe.h"
#include "demo.h"
#include "json_edit.h"

using namespace nettare;

namespace {

struct Page {
    Json document = demo::skewers();

    Page& make(const Result<Edit>& edit) {
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

std::string refusal(const Result<Edit>& edit, ErrorCode code) {
    REQUIRE_FALSE(edit);
    CHECK(edit.error().code == code);
    return edit.error().pointer;
}

}  // namespace

TEST_CASE("title, note and yield change as they are typed", "[edit]") {
    Page page;
    page.make(setTitle(page.document, "Prawns, "));
    CHECK(page.at("/title") == R"("Prawns, ")");
    page.make(setNote(page.document, "Hot."));
    CHECK(page.at("/note") == R"("Hot.")");
    page.make(setNote(page.document, ""));
    CHECK(page.at("/note") == "nothing");
    page.make(setYield(page.document, "ten"));
    page.make(setPieceWord(page.document, "stick"));
    page.make(setPiecesWord(page.document, "sticks"));
    CHECK(page.at("/makes") == R"({"piece":"stick","pieces":"ten","plural":"sticks"})");
    CHECK(refusal(setTitle(page.document, " "), ErrorCode::EmptyText) == "/title");
    CHECK(refusal(setTitle(page.document, "a\nb"), ErrorCode::TextNotClean) == "/title");
    CHECK(refusal(setPieceWord(page.document, std::string(201, 'x')), ErrorCode::TextTooLong) ==
          "/makes/piece");
}

TEST_CASE("a portion is in pieces or in grams", "[edit]") {
    Page page;
    page.make(setPortionGrams(page.document, "150"));
    CHECK(page.at("/portion") == R"({"grams":"150"})");
    page.make(setPortionPieces(page.document, "2"));
    CHECK(page.document == demo::skewers());
    CHECK(refusal(setPortionGrams(page.document, "many"), ErrorCode::NotADecimal) ==
          "/portion/grams");
}

TEST_CASE("a ceiling is set, changed and taken away", "[edit]") {
    using enum Component;
    Page page;
    page.make(setTarget(page.document, NA, Basis::Portion, TargetEnd::AtMost, "500"));
    CHECK(page.at("/targets/1") == R"({"at_most":"500","component":"NA","per":"portion"})");
    page.make(setTarget(page.document, NA, Basis::Portion, TargetEnd::AtMost, "450"));
    CHECK(page.at("/targets/1/at_most") == R"("450")");
    page.make(setTarget(page.document, NA, Basis::Portion, TargetEnd::AtLeast, "10"));
    CHECK(page.at("/targets/2/at_least") == R"("10")");
    page.make(setTarget(page.document, NA, Basis::Portion, TargetEnd::AtLeast, ""));
    page.make(setTarget(page.document, NA, Basis::Portion, TargetEnd::AtMost, ""));
    page.make(setTarget(page.document, ENERC_KCAL, Basis::Portion, TargetEnd::AtMost, ""));
    CHECK(page.at("/targets") == "nothing");
    page.make(setTarget(page.document, NA, Basis::Batch, TargetEnd::AtMost, ""));
    CHECK(refusal(setTarget(page.document, NA, Basis::Batch, TargetEnd::AtMost, "0"),
                  ErrorCode::NotPositive) == "/targets/0/at_most");
}

TEST_CASE("an assumption is set and given its default back", "[edit]") {
    Page page;
    page.make(setAssumption(page.document, Assumption::PieceSpread, "0.2"));
    page.make(setAssumption(page.document, Assumption::VolumeSpread, "0.1"));
    CHECK(page.at("/assumptions") == R"({"piece_spread":"0.2","volume_spread":"0.1"})");
    page.make(setAssumption(page.document, Assumption::PieceSpread, ""));
    page.make(setAssumption(page.document, Assumption::VolumeSpread, ""));
    CHECK(page.document == demo::skewers());
    CHECK(refusal(setAssumption(page.document, Assumption::SpreadFreedom, "0"),
                  ErrorCode::NotPositive) == "/assumptions/spread_freedom");
}

TEST_CASE("steps are added, changed, moved and removed by their number", "[edit]") {
    Page page;
    page.make(addStep(page.document, 3, "Rest for 5 min."));
    CHECK(page.at("/steps/3/text") == R"("Rest for 5 min.")");
    page.make(changeStep(page.document, 3, "Rest."));
    page.make(moveStep(page.document, 3, 0));
    CHECK(page.at("/steps/0/text") == R"("Rest.")");
    page.make(removeStep(page.document, 0));
    CHECK(page.document == demo::skewers());
    for (int i = 0; i < 3; ++i) page.make(removeStep(page.document, 0));
    CHECK(page.at("/steps") == "nothing");
    page.make(addStep(page.document, 0, "Grill until done."));
    CHECK(refusal(removeStep(page.document, 1), ErrorCode::EditDoesNotFit) == "/steps/1");
    CHECK(refusal(moveStep(page.document, 0, 1), ErrorCode::EditDoesNotFit) == "/steps/1");
    CHECK(refusal(changeStep(page.document, 0, ""), ErrorCode::EmptyText) == "/steps/0/text");
    CHECK(refusal(addStep(page.document, 2, "x"), ErrorCode::EditDoesNotFit) == "/steps/2");
}

TEST_CASE("an older state comes back whole", "[edit]") {
    Page page;
    const Json older = page.document;
    page.make(setTitle(page.document, "Other"));
    page.make(bringBack(page.document, older, "revision 1"));
    CHECK(page.document == older);
}
