#include "layering/header_rules.h"
#include "layering/include_rules.h"

#include <catch2/catch.hpp>

using namespace nettare;

namespace {

struct PlantedViolation {
    const char* place;
    const char* reason;
};

const PlantedViolation kPlanted[] = {
    {"app/bench/knows_charts.cpp:2 includes <QtCharts/QChartView>",
     "series_chart know QtCharts, so that every plot is dressed in the palette."},
    {"app/command_line/demo.cpp:2 includes <CLI/CLI.hpp>",
     "CLI11, so that the command line stands"},
    {"app/screens/knows_bus.cpp:2 includes <QDBusConnection>",
     "only app/theme knows D-Bus, so that all else runs the same without a desktop."},
    {"app/screens/knows_charts.cpp:2 includes <QtCharts/QChartView>",
     "series_chart know QtCharts, so that every plot is dressed in the palette."},
    {"app/screens/knows_keys.cpp:2 includes <QTest>",
     "only tests/app/gui knows QtTest, so that all else is tested without a window."},
    {"app/screens/knows_sqlite.cpp:2 includes <SQLiteCpp/Database.h>",
     "app knows no SQLite, so that another store can stand behind db."},
    {"app/screens/knows_store.cpp:2 includes \"db/kitchen/kitchen_store.h\"",
     "app knows db by its public headers, so that another store can stand behind them."},
    {"app/screens/knows_svg.cpp:2 includes <QSvgRenderer>",
     "only app/icons knows QtSvg, so that every drawing is coloured by the palette."},
    {"core/knows_app.h:2 includes \"app/words/error_sentence.h\"",
     "core knows no app, so that figures are the same in every window and script."},
    {"core/knows_clock.h:2 includes <chrono>",
     "core knows no clock, so that a revision gives the same figures in ten years."},
    {"core/knows_db.cpp:2 includes \"db/table_file.h\"",
     "core knows no db, so that figures do not depend on how a kitchen is stored."},
    {"core/knows_files.cpp:2 includes <fstream>",
     "core knows no files, so that figures depend on nothing but what is handed in."},
    {"core/knows_qt.cpp:2 includes <QString>",
     "core knows no Qt, so that figures can be computed without a desktop."},
    {"core/knows_sqlite.cpp:2 includes <sqlite3.h>",
     "core knows no SQLite, so that figures can be recomputed without a file."},
    {"core/knows_sqlite_wrapper.h:2 includes <SQLiteCpp/SQLiteCpp.h>",
     "core knows no SQLite, so that figures can be recomputed without a file."},
    {"core/knows_tests.cpp:2 includes <catch2/catch.hpp>",
     "only tests know Catch2, so that the program ships without its tests."},
    {"core/label/knows_arguments.cpp:2 includes <CLI/CLI.hpp>",
     "CLI11, so that the command line stands"},
    {"core/quantity/knows_boost.cpp:2 includes <boost/math/distributions/students_t.hpp>",
     "knows Boost.Math, so that quantiles come from one place."},
    {"core/simulation/draws.cpp:2 includes <boost/math/distributions/normal.hpp>",
     "knows Boost.Math, so that quantiles come from one place."},
    {"core/simulation/knows_draws.cpp:2 includes <boost/random/mersenne_twister.hpp>",
     "only core/simulation/draws.cpp knows Boost.Random, so that draws come from one place."},
    {"core/support/climbs.h:2 includes \"../quantity/mass.h\"",
     "from the layer down, so that a file can be moved and found."},
    {"core/support/knows_json.cpp:2 includes <nlohmann/json.hpp>",
     "knows nlohmann, so that no other file reads JSON that lets duplicate keys pass."},
    {"core/wording/knows_recipes.cpp:2 includes \"core/recipe/recipe_document.h\"",
     "core/wording knows words and numbers alone, so that a line reads the same in every recipe."},
    {"db/kitchen/kitchen.h:2 includes <sqlite3.h>",
     "public headers of db name no SQLite type, so that another store can stand behind them."},
    {"db/knows_app.cpp:2 includes \"app/workbench.h\"",
     "db knows no app, so that a kitchen can be read by any program."},
    {"db/knows_arguments.cpp:2 includes <CLI/App.hpp>", "CLI11, so that the command line stands"},
    {"db/knows_dtl.cpp:2 includes <dtl/dtl.hpp>",
     "knows dtl, so that differences are found in one place."},
    {"db/knows_openssl.cpp:2 includes <openssl/sha.h>",
     "knows OpenSSL, so that hashes come from one place."},
    {"db/knows_qt.h:2 includes <QtCore/QByteArray>",
     "db knows no Qt, so that a kitchen can be read without a desktop."},
    {"tests/core/test_with_json.cpp:2 includes <valijson/validator.hpp>",
     "knows nlohmann, so that no other file reads JSON that lets duplicate keys pass."},
    {"tests/core/test_with_qt.cpp:2 includes <QtTest>",
     "tests of core know core alone, so that they prove that core needs nothing else."},
    {"tests/db/test_with_app.cpp:2 includes \"app/workbench.h\"",
     "tests of db know no app and no Qt, so that they prove that db needs neither."},
};

}  // namespace

TEST_CASE("no layer includes what it must not know", "[layering]") {
    const std::vector<std::string> found = forbiddenIncludes(NETTARE_SOURCE_ROOT);
    for (const std::string& sentence : found) UNSCOPED_INFO(sentence);
    CHECK(found.empty());
}

TEST_CASE("a planted violation of each direction is found with its reason", "[layering]") {
    using Catch::Matchers::Contains;
    using Catch::Matchers::StartsWith;
    const auto found =
        forbiddenIncludes(std::string{NETTARE_SOURCE_ROOT} + "/tests/layering/planted");
    REQUIRE(found.size() == std::size(kPlanted));
    for (std::size_t i = 0; i < found.size(); ++i) {
        CHECK_THAT(found[i], StartsWith(std::string{kPlanted[i].place} + ": "));
        CHECK_THAT(found[i], Contains(kPlanted[i].reason));
    }
}

TEST_CASE("a source includes its own header first, so that every header stands alone",
          "[layering]") {
    const std::vector<std::string> found = headersNotAlone(NETTARE_SOURCE_ROOT);
    for (const std::string& sentence : found) UNSCOPED_INFO(sentence);
    CHECK(found.empty());
}

TEST_CASE("a planted header that does not stand alone is found", "[layering]") {
    CHECK(headersNotAlone(std::string{NETTARE_SOURCE_ROOT} + "/tests/layering/planted/headers") ==
          std::vector<std::string>{
              "core/late_guard.h does not begin with #pragma once.",
              "core/leaning.cpp does not include core/leaning.h before all else.",
          });
}
