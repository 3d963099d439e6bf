#include "core/publish/figures_text.h"

#include <catch2/catch.hpp>

#include "golden.h"
#include "kitchen.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

namespace {

/// A weighed, a scaled, a table, a written, an assumed line and a series of two; a marinade, sticks
/// and ceilings that are met, nearly met and missed.
Kitchen platter() {
    Kitchen kitchen;
    kitchen.json("title", R"("Platter of the test")");
    kitchen.reading("oil", "41").reading("bulbs", "382").reading("pinch", "6");
    kitchen.reading("a", "230").reading("b", "246");
    kitchen.reading("left", "12", "", "residue").reading("sticks", "10", "", "residue");
    kitchen.reading("dish", "1100", "", "cooked");
    kitchen.append("series", R"({"id":"bulb","name":"bulbs","kind":"per piece","of":"bulb",)"
                             R"("readings":["a","b"]})");
    kitchen.line(R"({"id":"oil","amount":"3","unit":"tbsp","food":"oil","weighed":["oil"]})");
    kitchen.line(R"({"id":"fennel","amount":"3","piece":"bulb","food":"fennel",)"
                 R"("weighed":["bulbs"],"weighed_for":"2"})");
    kitchen.line(R"({"id":"more","amount":"1","piece":"bulb","food":"fennel",)"
                 R"("series":{"id":"bulb","use":"others"}})");
    kitchen.line(R"({"id":"cup","amount":"1/2","unit":"cup","food":"fennel","size":"sliced"})");
    kitchen.line(R"({"id":"pinch","amount":"1","piece":"pinch","food":"sugar",)"
                 R"("weighed":["pinch"]})");
    kitchen.line(R"({"id":"sugar","amount":"100","unit":"g","food":"sugar"})");
    kitchen.line(R"({"id":"dust","amount":"1","piece":"dusting","food":"sugar","assumed":)"
                 R"({"grams":"5","within":"2","reason":"by eye"}})");
    kitchen.json("residues", R"([{"mixture":["oil","pinch"],"readings":["left"]}])");
    kitchen.json("cooked", R"({"readings":["dish"],"not_eaten":["sticks"]})");
    kitchen.json("targets", R"([{"component":"ENERC_KCAL","per":"portion","at_most":"500"},)"
                            R"({"component":"ENERC_KCAL","per":"piece","at_most":"105"},)"
                            R"({"component":"FIBTG","per":"batch","at_least":"40"},)"
                            R"({"component":"VITC","per":"portion","at_most":"90"}])");
    return kitchen;
}

std::string pageOf(const Kitchen& kitchen, Basis basis) {
    const Served served{kitchen};
    return figuresPage(Served::orThrow(figuresPer(basis, served.dossier, served.cooked)),
                       served.dossier, served.cooked,
                       Served::orThrow(verdictsOf(served.dossier, served.cooked)));
}

}  // namespace

TEST_CASE("the page of figures stays as it was last read", "[publish][golden]") {
    checkGolden("platter_per_portion.txt", pageOf(platter(), Basis::Portion));
}

TEST_CASE("the page and its ceilings say of what they are", "[publish]") {
    const Dossier dossier = Served::orThrow(platter().dossier());
    for (const auto& [meaning, words] :
         {std::pair{Meaning::RecipeMean, "recipe mean"}, {Meaning::AnyPiece, "any one piece"}}) {
        const Cooked cooked = Served::orThrow(cook(dossier, meaning));
        const std::string page =
            figuresPage(Served::orThrow(figuresPer(Basis::Piece, dossier, cooked)), dossier, cooked,
                        Served::orThrow(verdictsOf(dossier, cooked)));
        CHECK(page.find(std::string{"\nper piece, "} + words + "; ± is 95 %\n") !=
              std::string::npos);
        CHECK(page.find(std::string{"\nCeilings and floors, "} + words + "\n") !=
              std::string::npos);
    }
}

TEST_CASE("the page says what the figures are per, and has no ceilings where none is set",
          "[publish]") {
    Kitchen kitchen;
    kitchen.line(R"({"id":"f","amount":"200","unit":"g","food":"fennel"})");
    const std::string page = pageOf(kitchen, Basis::Hundred);
    CHECK(page.starts_with("Test dish\nper 100 g before cooking, this batch; ± is 95 %\n"));
    CHECK(page.find("Ceilings and floors") == std::string::npos);
    CHECK(page.find("Grams eaten, of the whole batch") != std::string::npos);
}

TEST_CASE("every light net on a coarse scale gets its caution, not those of lines alone",
          "[publish]") {
    Kitchen kitchen = Kitchen{}.reading("oil", "41").reading("clove", "4");
    kitchen.reading("left", "12", "", "residue").reading("sticks", "10", "", "residue");
    kitchen.reading("dish", "400", "", "cooked");
    kitchen.append("series", R"({"id":"cloves","name":"cloves","kind":"per piece","of":"clove",
                                 "readings":["clove"]})");
    kitchen.line(R"({"id":"o","amount":"3","unit":"tbsp","food":"oil","weighed":["oil"]})");
    kitchen.line(R"({"id":"c","amount":"100","piece":"clove","food":"fennel",
                     "series":{"id":"cloves","use":"others"}})");
    kitchen.json("residues", R"([{"mixture":["o","c"],"readings":["left"]}])");
    kitchen.json("cooked", R"({"readings":["dish"],"not_eaten":["sticks"]})");
    const std::string page = pageOf(kitchen, Basis::Batch);
    for (const char* light : {"clove", "left", "sticks"})
        CHECK((page.find(std::string{light} + " is under 20 steps of its scale") !=
               std::string::npos));
    for (const char* heavy : {"oil", "dish"})
        CHECK_FALSE((page.find(std::string{heavy} + " is under 20 steps of its scale") !=
                     std::string::npos));
    // 0.41 d of 12 g.
    CHECK(page.find("left is under 20 steps of its scale: rounding alone is 3.4 % of it") !=
          std::string::npos);
}
