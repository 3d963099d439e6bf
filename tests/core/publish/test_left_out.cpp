#include "core/publish/left_out.h"

#include <catch2/catch.hpp>

#include "compared_kitchens.h"
#include "core/publish/basis_text.h"
#include "core/publish/figures_json.h"
#include "core/publish/figures_text.h"
#include "core/publish/statement.h"

using namespace kitchen;

namespace {

/// Fennel with sugar to taste and half of the optional oil.
Kitchen saladWithout() {
    Kitchen kitchen;
    kitchen.line(R"({"id":"f","amount":"200","unit":"g","food":"fennel"})");
    kitchen.line(R"({"id":"s","to_taste":true,"food":"sugar"})");
    kitchen.line(R"({"id":"o","amount":"1","unit":"tbsp","food":"oil","optional":true})");
    return kitchen.json("counting", R"({"optional":"between"})");
}

Json jsonOf(const Served& served) {
    return figuresJson(*figuresPer(Basis::Batch, served.dossier, served.cooked), served.dossier,
                       served.cooked);
}

std::string pageOf(const Served& served) {
    return figuresPage(*figuresPer(Basis::Batch, served.dossier, served.cooked), served.dossier,
                       served.cooked, {});
}

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

std::string energyOf(const Served& served, Component component) {
    return statementText(served.figure(Basis::Piece, component), served.dossier.main(), {},
                         uncountedLines(served.dossier, served.cooked, component));
}

}  // namespace

TEST_CASE("the page of figures says without what they are", "[publish]") {
    const std::string page = pageOf(Served{saladWithout()});
    CHECK(holds(page, "\n\nwithout: sugar (to taste)\n\n"));
    CHECK(holds(page, "to taste       sugar"));
    CHECK(holds(page, "  left out: to taste\n"));
    CHECK(holds(page, "table, spread assumed, optional, between none and all\n"));
    Kitchen whole =
        saladWithout().json("lines", R"([{"id":"f","amount":"2","unit":"g","food":"oil"}])");
    CHECK_FALSE(holds(pageOf(Served{whole}), "without"));
}

TEST_CASE("a pinch a portion is said beside its measure", "[publish]") {
    const Kitchen kitchen = saladWithout().json("counting", R"({"to_taste":"a pinch a portion"})");
    CHECK(holds(pageOf(Served{kitchen}), "table, spread assumed, a pinch a portion\n"));
}

TEST_CASE("the JSON of figures names what is left out, and why", "[publish]") {
    const Json json = jsonOf(Served{saladWithout()});
    CHECK(writeJson(*json.find("without")) == R"([{"food":"sugar","why":"to taste"}])");
    const Json::Array& lines = *json.find("lines")->items();
    CHECK(lines[0].find("counted") == nullptr);
    CHECK(*lines[1].find("counted")->text() == "optional, between none and all");
    CHECK(*lines[2].find("left_out")->text() == "to taste");
    CHECK(*lines[2].find("grams_eaten")->number() == 0);
    Kitchen whole =
        saladWithout().json("lines", R"([{"id":"f","amount":"2","unit":"g","food":"oil"}])");
    CHECK(jsonOf(Served{whole}).find("without") == nullptr);
}

TEST_CASE("a statement names what is left out where it could matter", "[publish]") {
    const Served served{saladWithout()};
    CHECK(energyOf(served, Component::ENERC_KCAL)
              .ends_with(" In part: oil (optional, between none and all). "
                         "Without sugar (to taste)."));
    // Oil has no sugars, and sugar has no fat that its row knows of: it may hold some.
    CHECK(energyOf(served, Component::SUGAR).ends_with(" Without sugar (to taste)."));
    CHECK_FALSE(holds(energyOf(served, Component::SUGAR), "oil"));
}

TEST_CASE("what a kept recipe leaves out is named with the recipe", "[publish]") {
    Kitchen menu;
    menu.append("foods", R"({"id":"salad","name":"salad","recipe":"salad"})");
    menu.line(R"({"id":"s","amount":"1","piece":"batch","food":"salad"})")
        .kept("salad", saladWithout());
    const Served served{menu};
    CHECK(withoutText(uncountedLines(served.dossier, served.cooked)) ==
          "without: Test dish, sugar (to taste)");
}

TEST_CASE("the ingredient table knows which lines count", "[publish]") {
    const ServedState state{saladWithout()};
    const auto rows = sheetLines(state.document, state.served.dossier, state.served.cooked);
    CHECK(rows[0].counting == LineCounting::Counted);
    CHECK(rows[1].counting == LineCounting::ToTaste);
    CHECK(rows[1].amount == "to taste");
    CHECK(rows[1].grams == 0);
    CHECK_FALSE(rows[1].way);
    CHECK(rows[2].counting == LineCounting::Between);
    CHECK(rows[2].grams == Approx(6.75));
}

TEST_CASE("the page names residues that no line shows", "[publish]") {
    Kitchen kitchen = saladWithout().reading("plate", "12", "", "residue");
    kitchen.reading("sink", "20", "", "residue").reading("leaf", "30", "", "residue");
    kitchen.reading("dish", "1", "", "residue");
    kitchen.json("residues", R"([{"unknown":true,"called":"scraps","readings":["plate"]},)"
                             R"({"water":true,"readings":["sink"]},)"
                             R"({"not_eaten":true,"readings":["leaf"]},)"
                             R"({"drip":"oil","readings":["dish"]}])");
    const Served served{kitchen};
    const std::string page = pageOf(served);
    CHECK(holds(page,
                "\n  scraps: 12.0 g of unknown make-up are left over, anything between the "
                "leanest and the richest line\n"));
    CHECK(holds(page, "\n  20.0 g of cooking water were poured off\n"));
    CHECK(holds(page, "\n  30.0 g are not eaten and carry nothing away\n"));
    CHECK(holds(page, "\n  1.0 g of oil ran off\n"));
    const Json all = jsonOf(served);
    const Json::Array& residues = *all.find("residues")->items();
    REQUIRE(residues.size() == 4);
    CHECK(*residues[0].find("called")->text() == "scraps");
    CHECK(*residues[1].find("kind")->text() == "water");
    CHECK(*residues[3].find("grams")->number() == 1);
}

TEST_CASE("a batch of a range of pieces says what it counts as", "[publish]") {
    Kitchen kitchen = saladWithout();
    kitchen.json("makes", R"({"pieces":"4-6","piece":"bowl","plural":"bowls"})");
    const Served served{kitchen};
    CHECK(basisText(*figuresPer(Basis::Batch, served.dossier, served.cooked),
                    served.dossier.main()) == "per batch of 4-6 bowls, counted as 5");
}
