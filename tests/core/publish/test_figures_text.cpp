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

TEST_CASE("the page says what the figures are per, and has no ceilings where none is set",
          "[publish]") {
    Kitchen kitchen;
    kitchen.line(R"({"id":"f","amount":"200","unit":"g","food":"fennel"})");
    const std::string page = pageOf(kitchen, Basis::Hundred);
    CHECK(page.starts_with("Test dish\nper 100 g before cooking, this batch; ± is 95 %\n"));
    CHECK(page.find("Ceilings and floors") == std::string::npos);
    CHECK(page.find("Grams eaten, of the whole batch") != std::string::npos);
}
