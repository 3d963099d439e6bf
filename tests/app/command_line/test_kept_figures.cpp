#include <catch2/catch.hpp>
#include <sstream>

#include "app/command_line/document_commands.h"
#include "app/command_line/kept_figures.h"
#include "app/command_line/show_recipe.h"
#include "app/files/share_folder.h"
#include "core/publish/figures_json.h"
#include "core/publish/figures_record.h"

using namespace nettare;

namespace {

OpenedRecipe skewersNow() {
    DossierLoader loader{shareFolder() + "/starter.table"};
    auto recipe = documentsOf(loader)(NETTARE_RESOURCES "/demo/prawn-fennel-skewers.json");
    REQUIRE(recipe);
    recipe->kept = KeptFigures{figuresRecord(recipe->dossier, recipe->cooked), kArithmeticVersion};
    return std::move(*recipe);
}

/// The energy in kcal of a portion as it was kept.
Json& keptEnergy(OpenedRecipe& recipe) {
    for (Json& basis : *recipe.kept->figures.find("bases")->items())
        if (*basis.find("basis") == Json{"portion"})
            for (Json& figure : *basis.find("figures")->items())
                if (*figure.find("component") == Json{"ENERC_KCAL"}) return figure;
    throw std::out_of_range{"no energy was kept"};
}

std::string shownOf(const OpenedRecipe& recipe, bool json) {
    FiguresCommand command;
    command.recipes = {"any"};
    command.json = json;
    std::ostringstream out;
    REQUIRE(showFigures(
        command, [&](const std::string&) { return recipe; }, out));
    return out.str();
}

}  // namespace

TEST_CASE("figures that come out as they were kept are shown once", "[keptfigures]") {
    OpenedRecipe recipe = skewersNow();
    CHECK_FALSE(differFromToday(*recipe.kept, recipe.dossier, recipe.cooked));
    CHECK(shownOf(recipe, false).find("kept figures") == std::string::npos);
    const std::string withKept = shownOf(recipe, true);
    recipe.kept.reset();
    CHECK(withKept == shownOf(recipe, true));
}

TEST_CASE("a figure that was kept otherwise stands beside today's", "[keptfigures]") {
    OpenedRecipe recipe = skewersNow();
    keptEnergy(recipe).set("value", Json{150.2}).set("at_least", Json{150.2});
    keptEnergy(recipe).set("at_most", Json{150.2});
    CHECK(differFromToday(*recipe.kept, recipe.dossier, recipe.cooked));
    const std::string page = shownOf(recipe, false);
    const std::string now = std::to_string(kArithmeticVersion);
    CHECK(page.ends_with("\nWhere kept figures (arithmetic " + now +
                         ") differ from today's (arithmetic " + now +
                         ")\n"
                         "  energy: kept 150 kcal ± 19, today 144 kcal ± 19\n"));
    const auto json = parseJson(shownOf(recipe, true));
    REQUIRE(json);
    CHECK(*json->find("kept")->find("arithmetic") == Json{double{kArithmeticVersion}});
    CHECK(json->find("kept")->find("figures")->items()->size() == 41);
}

TEST_CASE("a difference behind the printed digits is written out", "[keptfigures]") {
    OpenedRecipe recipe = skewersNow();
    Json& energy = keptEnergy(recipe);
    const double today = *energy.find("value")->number();
    const double before = today + 1e-9;
    energy.set("value", Json{before}).set("at_least", Json{before}).set("at_most", Json{before});
    CHECK(shownOf(recipe, false)
              .ends_with("  energy: kept and today 144 kcal ± 19, unrounded " + numberText(before) +
                         " and " + numberText(today) + "\n"));
}

TEST_CASE("another arithmetic is named even where every figure is the same", "[keptfigures]") {
    OpenedRecipe recipe = skewersNow();
    recipe.kept->arithmetic = 7;
    CHECK(shownOf(recipe, false)
              .ends_with("\nWhere kept figures (arithmetic 7) differ from today's (arithmetic " +
                         std::to_string(kArithmeticVersion) + ")\n  none\n"));
    std::ostringstream out;
    REQUIRE(showStatement(
        {}, [&](const std::string&) { return recipe; }, out));
    CHECK(out.str().ends_with(
        "\nThese are today's figures; those kept with this revision differ, and “nettare figures” "
        "shows both.\n"));
}
