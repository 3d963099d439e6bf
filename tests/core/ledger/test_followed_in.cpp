#include "core/ledger/followed_in.h"

#include <catch2/catch.hpp>

using namespace nettare;

TEST_CASE("a dossier knows which of its series follows one of the ledger", "[ledger]") {
    Dossier dossier;
    dossier.series.resize(4);
    dossier.series[1] = {"p", "prawns", SeriesKind::PerPiece, "prawn", {}, {}, false, {}, {}};
    dossier.series[1].bench = BenchEntry{"Prawns", "", {"size 16/20"}};
    dossier.series[2] = {"q", "prawns", SeriesKind::PerPiece, "prawn", {}, {}, false, {}, {}};
    dossier.series[2].bench = BenchEntry{"Prawns", "", {}};
    dossier.series[3] = {"r", "corn", SeriesKind::Ratio, "", {}, {}, false, {}, {}};
    dossier.series[3].bench = BenchEntry{"corn", "edible / bought", {}};

    dossier.series[0] = {"s", "squid", SeriesKind::PerPiece, "tube", {}, {}, false, {}, {}};
    CHECK(followedIn(dossier, {"Squid", SeriesKind::PerPiece, "tube"}, {}) == 0U);
    CHECK_FALSE(followedIn(dossier, {"Squid", SeriesKind::PerPiece, "tube"}, {"small"}));

    dossier.series[0] = {"t", "fennel, trimmed", SeriesKind::Ratio, "", {}, {}, false, {}, {}};
    CHECK(followedIn(dossier, {"fennel, trimmed", SeriesKind::Ratio, "edible / bought"}, {}) == 0U);

    const SeriesKey prawns{"prawns", SeriesKind::PerPiece, "prawn"};
    CHECK(followedIn(dossier, prawns, {"size 16/20"}) == 1U);
    CHECK(followedIn(dossier, prawns, {}) == 2U);
    CHECK_FALSE(followedIn(dossier, prawns, {"size 21/25"}));
    CHECK_FALSE(followedIn(dossier, {"prawns", SeriesKind::PerPiece, "piece"}, {}));
    CHECK(followedIn(dossier, {"corn", SeriesKind::Ratio, "edible / bought"}, {}) == 3U);
    CHECK_FALSE(followedIn(dossier, {"corn", SeriesKind::Ratio, "cooked / raw"}, {}));
}
