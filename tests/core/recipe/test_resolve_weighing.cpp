#include <catch2/catch.hpp>

#include "core/recipe/dossier.h"

#include "json_edit.h"
#include "pantry.h"
#include "recipe_documents.h"

using namespace nettare;

namespace {

/// Net grams of a reading between two weights on a scale of that unit.
double netOf(const char* unit, const char* gross, const char* tare) {
    Json document = with(fullRecipe(), "/scales/1/unit", Json{unit});
    document = with(document, "/indications/4/shown", Json{gross});
    document = with(document, "/indications/3/shown", Json{tare});
    const auto dossier = fullPantry().dossierOf(document);
    REQUIRE(dossier);
    return netGrams(*dossier, dossier->readings[2]);
}

}  // namespace

TEST_CASE("a net weight is exact in decimal where doubles are not", "[recipe]") {
    const auto dossier = fullPantry().dossierOf(fullRecipe());
    REQUIRE(dossier);
    CHECK(271.1 - 212.2 != 58.9);
    CHECK(netGrams(*dossier, dossier->readings[0]) == 58.9);
    CHECK(netOf("g", "0.3", "0.1") == 0.2);
    CHECK(netOf("g", "12.5", "-0.1") == 12.6);
    CHECK(netOf("g", "5", "5.0") == 0);
}

TEST_CASE("ounces, pounds and kilograms become grams by one exact factor", "[recipe]") {
    // NIST Handbook 44, appendix C: 1 oz = 28.349523125 g, 1 lb = 453.59237 g.
    CHECK(netOf("oz", "2.75", "0.75") == 2 * 28.349523125);
    CHECK(netOf("oz", "1.3", "0.3") == 28.349523125);
    CHECK(netOf("lb", "1.1", "0.1") == 453.59237);
    CHECK(netOf("kg", "1.234", "0.234") == 1000);
}

TEST_CASE("scales, vessels and weights are kept with their indices", "[recipe]") {
    const auto dossier = fullPantry().dossierOf(fullRecipe());
    REQUIRE(dossier);
    REQUIRE(dossier->scales.size() == 2);
    CHECK(dossier->scales[0].unit->symbol == "g");
    CHECK(dossier->scales[0].readability.text() == "0.1");
    CHECK(dossier->scales[0].calibrationRelative == 0.002);
    CHECK(dossier->scales[1].unit->symbol == "oz");
    CHECK(dossier->scales[1].calibrationRelative == 0);
    CHECK(dossier->vessels.at(0).scale == 0);
    CHECK(dossier->indications.at(3).scale == 1);
    CHECK(dossier->readings.at(0).pieces == 2);
    CHECK(std::get<Reading::KnownTare>(dossier->readings[0].tare).vessel == 0);
    CHECK(std::get<Reading::ShownTare>(dossier->readings[2].tare).indication == 3);
    CHECK(dossier->series.at(0).readings == std::vector<std::size_t>{0});
    CHECK(dossier->series.at(2).pairs.at(0) == std::pair<std::size_t, std::size_t>{0, 1});
}

TEST_CASE("a scale shows weights, never volumes", "[recipe]") {
    const ErrorCode code = ErrorCode::UnitNotOfKind;
    checkUnresolved({{"/scales/0/unit", R"("ml")", code, "/scales/0/unit"},
                     {"/scales/1/unit", R"("cup")", code, "/scales/1/unit"}});
    CHECK(errorAfter("/scales/1/unit", R"("cup")").value("found") == "cup");
}

TEST_CASE("a tare above its gross is refused with both weights", "[recipe]") {
    checkUnresolved({{"/indications/0/shown", R"("212.1")", ErrorCode::NetNegative, "/readings/0"},
                     {"/indications/4/shown", R"("0.74")", ErrorCode::NetNegative, "/readings/2"}});
    const Error error = errorAfter("/indications/0/shown", R"("212.1")");
    CHECK(error.value("found") == "apple-bought");
    CHECK(error.value("gross") == "212.1");
    CHECK(error.value("tare") == "212.2");
}

TEST_CASE("gross and tare are shown in one unit", "[recipe]") {
    const ErrorCode code = ErrorCode::ReadingUnitsDiffer;
    checkUnresolved({{"/readings/2/gross", R"("apple-1")", code, "/readings/2"},
                     {"/readings/0/gross", R"("parcel-full")", code, "/readings/0"}});
    CHECK(errorAfter("/readings/2/gross", R"("apple-1")").value("found") == "batch");
}

TEST_CASE("a series of nothing weighs nothing", "[recipe]") {
    const ErrorCode code = ErrorCode::NothingWeighed;
    checkUnresolved({{"/indications/0/shown", R"("212.2")", code, "/series/0/readings/0"},
                     {"/indications/1/shown", R"("212.20")", code, "/series/1/readings/0"}});
    CHECK(errorAfter("/indications/0/shown", R"("212.2")").value("found") == "apple-bought");
}
