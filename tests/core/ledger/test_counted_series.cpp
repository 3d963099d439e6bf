#include "core/ledger/counted_series.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "ledger_chain.h"

using namespace nettare;

namespace {

const SeriesKey kCountedPrawns{"prawn meat", SeriesKind::PerPiece, "prawn"};
const SeriesKey kTrim{"fennel", SeriesKind::Ratio, "edible / bought"};

LedgerEntry taggedPrawn(std::vector<std::string> tags) {
    LedgerEntry entry = pieceOf("prawn meat");
    entry.series->tags = std::move(tags);
    return entry;
}

LedgerEntry trimmed(const std::string& before) {
    LedgerEntry entry;
    entry.what = "fennel";
    entry.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, before};
    return entry;
}

CountedSeries counted(const Chain& chain, const SeriesKey& key,
                      const std::vector<std::string>& tags = {}) {
    return countedSeries(readingsOf(chain.entries, {}), key, tags);
}

}  // namespace

TEST_CASE("a series counts its own readings that stand", "[ledger]") {
    Chain chain;
    const std::string bowl = chain.show("212.2");
    chain.showOver(bowl, "271.1", pieceOf("Prawn Meat", 6));
    chain.showOver(bowl, "222", pieceOf("squid"));
    const std::string slip = chain.showOver(bowl, "217.1", pieceOf("prawn meat"));
    const std::string odd = chain.showOver(bowl, "240", pieceOf("prawn meat"));
    chain.showOver(bowl, "221.9", pieceOf("prawn meat"));
    chain.say(EntryKind::Superseded, slip, "slip of the hand");
    chain.say(EntryKind::LeftOut, odd, "frozen together");
    const CountedSeries series = counted(chain, kCountedPrawns);
    REQUIRE(series.pieces.size() == 2);
    CHECK(series.places == std::vector<std::size_t>{1, 5});
    CHECK(series.pieces[0].grams == Approx(58.9));
    CHECK(series.pieces[0].pieces == 6);
    // d/sqrt(12) for each of the two indications (JCGM 100:2008, 4.3.7).
    CHECK(series.pieces[0].roundingGrams == Approx(0.1 * std::sqrt(2.0 / 12)));
    CHECK(series.pieces[1].grams == Approx(9.7));
    CHECK(series.ratios.empty());
}

TEST_CASE("conditions split a series", "[ledger]") {
    Chain chain;
    const std::string bowl = chain.show("100");
    chain.showOver(bowl, "109", taggedPrawn({"size 16/20"}));
    chain.showOver(bowl, "110", taggedPrawn({"size 16/20", "with head"}));
    chain.showOver(bowl, "111", taggedPrawn({}));
    CHECK(counted(chain, kCountedPrawns).pieces.size() == 3);
    CHECK(counted(chain, kCountedPrawns, {"size 16/20"}).pieces.size() == 2);
    const CountedSeries heads = counted(chain, kCountedPrawns, {"size 16/20", "with head"});
    REQUIRE(heads.pieces.size() == 1);
    CHECK(heads.pieces[0].grams == 10);
    CHECK(counted(chain, kCountedPrawns, {"wild"}).pieces.empty());
}

TEST_CASE("a ratio counts what came out with what went in", "[ledger]") {
    Chain chain;
    const std::string zero = chain.show("0");
    const std::string bulbs = chain.showOver(zero, "486");
    chain.showOver(zero, "382", trimmed(bulbs));
    const std::string lost = chain.showOver(zero, "500");
    chain.showOver(zero, "400", trimmed(lost));
    chain.say(EntryKind::Superseded, lost, "another bulb");
    const CountedSeries series = counted(chain, kTrim);
    REQUIRE(series.ratios.size() == 1);
    CHECK(series.places == std::vector<std::size_t>{2});
    CHECK(series.ratios[0].before == 486);
    CHECK(series.ratios[0].after == 382);
    const double u = 0.1 * std::sqrt(2.0 / 12);
    CHECK(series.ratios[0].roundingGrams == Approx(u * std::hypot(1, 382.0 / 486)));
    CHECK(series.pieces.empty());
}

TEST_CASE("a ratio has the rounding of what took the place of what went in", "[ledger]") {
    Chain chain;
    const std::string zero = chain.show("0");
    const std::string bulbs = chain.showOver(zero, "486");
    chain.showOver(zero, "382", trimmed(bulbs));
    LedgerEntry coarse;
    coarse.scale = "floor scale";
    coarse.readability = decimal("2");
    const std::string floor = chain.show("0", coarse);
    coarse.refersTo = bulbs;
    coarse.reason = "misread";
    chain.showOver(floor, "488", coarse);
    const CountedSeries series = counted(chain, kTrim);
    REQUIRE(series.ratios.size() == 1);
    CHECK(series.ratios[0].before == 488);
    CHECK(series.ratios[0].roundingGrams ==
          Approx(std::sqrt(2.0 / 12) * std::hypot(0.1, 2 * 382.0 / 488)));
}

TEST_CASE("ounces count as grams", "[ledger]") {
    Chain chain;
    LedgerEntry shown = pieceOf("prawn meat");
    shown.unit = "oz";
    const std::string zero = chain.show("0", [] {
        LedgerEntry entry;
        entry.unit = "oz";
        return entry;
    }());
    chain.showOver(zero, "1", shown);
    const CountedSeries series = counted(chain, kCountedPrawns);
    REQUIRE(series.pieces.size() == 1);
    CHECK(series.pieces[0].grams == Approx(28.349523125));
}
