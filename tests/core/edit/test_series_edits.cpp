#include "core/edit/series_edits.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <random>

#include "bound_draft.h"
#include "core/edit/edit_draft.h"
#include "core/edit/place.h"
#include "core/nutrition/weigh.h"
#include "ledger_chain.h"

using namespace nettare;

namespace {

const SeriesKey kBenchPrawns{"Prawn meat", SeriesKind::PerPiece, "prawn"};

/// A series of a chain, as the kitchen hands it on.
SeriesToBind seriesIn(const Chain& chain, const SeriesKey& key = kBenchPrawns) {
    SeriesToBind series;
    series.key = key;
    for (LedgerReading& reading : readingsOf(chain.entries, ScaleChecks{chain.entries})) {
        const auto own = seriesKeyOf(reading.entry());
        (own && sameSeries(*own, key) ? series.readings : series.tares)
            .push_back(std::move(reading));
    }
    return series;
}

/// Six readings of one prawn each over one bowl: 9.6, 9.9, 10.1, 9.7, 9.8 and 9.5 g.
Chain sixPrawns() {
    Chain chain;
    const std::string bowl = chain.show("212.2");
    for (const char* shown : {"221.8", "222.1", "222.3", "221.9", "222.0", "221.7"})
        chain.showOver(bowl, shown, pieceOf("prawn meat"));
    return chain;
}
constexpr double kMeanOfSix = (9.6 + 9.9 + 10.1 + 9.7 + 9.8 + 9.5) / 6;

ErrorCode refusedBinding(const char* line, const SeriesToBind& series) {
    const auto edit = bindToSeries(demo::skewers(), line, series, SeriesUse::Others);
    REQUIRE_FALSE(edit);
    return edit.error().code;
}

}  // namespace

TEST_CASE("thirty-six prawns weigh 36 times the mean of the bench's series", "[edit][bench]") {
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "prawns", seriesIn(sixPrawns()), SeriesUse::Others));
    const OpenWay way = draft.way("prawns");
    CHECK(way.way == Way::Series);
    CHECK(way.grams.value() == Approx(36 * kMeanOfSix));
    CHECK(way.readings == 6);
    CHECK(draft.at("/lines/prawns/series") == R"({"id":"prawn-meat-2","use":"others"})");
    CHECK(draft.at("/series/prawn-meat-2/bench") == R"({"what":"Prawn meat"})");
    CHECK(draft.at("/series/prawn-meat-2/of") == R"("prawn")");
    CHECK(draft.at("/readings/" + chainId(2)) == R"({"gross":")" + chainId(2) + R"(","id":")" +
                                                     chainId(2) + R"(","tare":")" + chainId(1) +
                                                     R"("})");
}

TEST_CASE("a line goes from its series to one reading and back, a step each", "[edit][bench]") {
    const Chain chain = sixPrawns();
    const SeriesToBind series = seriesIn(chain);
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "prawns", series, SeriesUse::Others));
    draft.make(bindToReading(draft.document, "prawns", series.readings.front(), series.tares[0]));
    CHECK(draft.way("prawns").way == Way::Weighed);
    CHECK(draft.way("prawns").grams.value() == Approx(9.6));
    CHECK(draft.at("/lines/prawns/weighed") == "[\"" + chainId(2) + "\"]");
    const std::size_t indications = draft.count("indications");
    draft.make(bindToSeries(draft.document, "prawns", series, SeriesUse::Others));
    CHECK(draft.way("prawns").way == Way::Series);
    CHECK(draft.at("/lines/prawns/way") == R"("series")");
    CHECK(draft.count("indications") == indications);
    draft.make(bindToReading(draft.document, "prawns", series.readings.back(), series.tares[0]));
    CHECK(draft.way("prawns").grams.value() == Approx(9.5));
}

TEST_CASE("two lines of one series share its readings and its mean", "[edit][bench]") {
    BoundDraft draft;
    const SeriesToBind series = seriesIn(sixPrawns());
    draft.make(bindToSeries(draft.document, "prawns", series, SeriesUse::Others));
    const std::size_t readings = draft.count("readings");
    Json another = *valueAt(draft.document, "/lines/prawns");
    another.set("id", Json{"more"}).remove("series");
    draft.document.find("lines")->append(another);
    draft.make(bindToSeries(draft.document, "more", series, SeriesUse::Among));
    CHECK(draft.count("readings") == readings);
    CHECK(draft.at("/lines/more/series") == R"({"id":"prawn-meat-2","use":"among"})");
}

TEST_CASE("the document's own readings are known again when they come from the ledger",
          "[edit][bench]") {
    BoundDraft draft;
    Chain chain;
    int number = 0;
    for (const char* shown : {"221.8", "222.1", "222.3", "221.9", "222.0", "271.1"}) {
        LedgerEntry entry = pieceOf("prawn meat", number == 5 ? 6 : 1);
        entry.scale = "pocket scale";
        entry.origin = EntryOrigin::Document;
        entry.vessel = "steel bowl";
        entry.vesselTare = decimal("212.2");
        chain.show(shown, entry);
        const auto id = "prawn-" + std::to_string(++number);
        LedgerEntry& recorded = chain.entries.back().entry;
        recorded.indication = id;
        recorded.at = textAt(*valueAt(draft.document, "/indications/" + id), "at");
    }
    const std::size_t readings = draft.count("readings");
    const std::size_t series = draft.count("series");
    const double before = draft.way("prawns").grams.value();
    draft.make(bindToSeries(draft.document, "prawns", seriesIn(chain), SeriesUse::Others));
    CHECK(draft.count("readings") == readings);
    CHECK(draft.count("series") == series);
    CHECK(draft.at("/series/prawn-meat/bench") == R"({"what":"Prawn meat"})");
    CHECK(draft.way("prawns").grams.value() == before);
}

TEST_CASE("a draft follows its series as the ledger goes on", "[edit][bench]") {
    Chain chain = sixPrawns();
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "prawns", seriesIn(chain), SeriesUse::Others));
    CHECK_FALSE(followSeries(draft.document, seriesIn(chain))->has_value());
    REQUIRE(followedSeries(draft.document).size() == 1);
    CHECK(sameSeries(followedSeries(draft.document).front().key, kBenchPrawns));
    const auto seventh = chain.showOver(chainId(1), "224.2", pieceOf("Prawn meat"));
    draft.follow(seriesIn(chain));
    CHECK(draft.way("prawns").readings == 7);
    chain.say(EntryKind::Superseded, seventh, "slip of the hand");
    draft.follow(seriesIn(chain));
    CHECK(draft.way("prawns").grams.value() == Approx(36 * kMeanOfSix));
    const auto left = chain.say(EntryKind::LeftOut, chainId(2), "broken");
    draft.follow(seriesIn(chain));
    CHECK(draft.way("prawns").readings == 5);
    CHECK(draft.at("/readings/" + chainId(2)) != "nothing");
    chain.say(EntryKind::TakenIn, left, "whole after all");
    draft.follow(seriesIn(chain));
    CHECK(draft.way("prawns").readings == 6);
    CHECK_FALSE(followSeries(draft.document, seriesIn(chain))->has_value());
}

TEST_CASE("a reading that the ledger's series never had stays in the document's", "[edit][bench]") {
    Chain chain = sixPrawns();
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "prawns", seriesIn(chain), SeriesUse::Others));
    valueAt(draft.document, "/series/prawn-meat-2/readings")->append(Json{"prawn-6"});
    chain.say(EntryKind::LeftOut, chainId(2), "broken");
    draft.follow(seriesIn(chain));
    CHECK(draft.at("/series/prawn-meat-2/readings").ends_with("\"prawn-6\"]"));
    CHECK(draft.way("prawns").readings == 6);
}

TEST_CASE("a series goes with its last reading, and the lines say so", "[edit][bench]") {
    Chain chain;
    const auto bowl = chain.show("212.2");
    const auto only = chain.showOver(bowl, "222.0", pieceOf("prawn meat"));
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "prawns", seriesIn(chain), SeriesUse::Others));
    chain.say(EntryKind::Superseded, only, "a thumb on the scale");
    draft.follow(seriesIn(chain));
    CHECK(draft.at("/lines/prawns/series") == "nothing");
    CHECK(draft.at("/series/prawn-meat-2") == "nothing");
}

TEST_CASE("conditions keep series of one food apart", "[edit][bench]") {
    BoundDraft draft;
    SeriesToBind big = seriesIn(sixPrawns());
    big.tags = {"head on", "size 16/20"};
    draft.make(bindToSeries(draft.document, "prawns", big, SeriesUse::Others));
    CHECK(draft.at("/series/prawn-meat-2/bench") ==
          R"({"tags":["head on","size 16/20"],"what":"Prawn meat"})");
    CHECK(draft.at("/series/prawn-meat-2/name") == R"("Prawn meat, head on, size 16/20")");
    draft.make(bindToSeries(draft.document, "prawns", seriesIn(sixPrawns()), SeriesUse::Others));
    CHECK(draft.at("/lines/prawns/series/id") == R"("prawn-meat-3")");
    CHECK(followedSeries(draft.document).size() == 2);
    CHECK(followedSeries(draft.document).front().tags == big.tags);
}

TEST_CASE("pooling is said of the series in the document", "[edit][bench]") {
    BoundDraft draft;
    SeriesToBind series = seriesIn(sixPrawns());
    series.pooling = SeriesPooling{true, {}};
    draft.make(bindToSeries(draft.document, "prawns", series, SeriesUse::Others));
    CHECK(draft.at("/series/prawn-meat-2/pooled") == "true");
    CHECK(followedSeries(draft.document).front().pooling->assumed);
    series.pooling = SeriesPooling{};
    CHECK_FALSE(followSeries(draft.document, series)->has_value());
    draft.make(bindToSeries(draft.document, "prawns", series, SeriesUse::Others));
    CHECK(draft.at("/series/prawn-meat-2/pooled") == "nothing");
}

TEST_CASE("an earlier series' spread goes with the series into the document", "[edit][bench]") {
    BoundDraft draft;
    Chain chain = sixPrawns();
    SeriesToBind series = seriesIn(chain);
    const EarlierEntry earlier{"prawn meat, 2025", decimal("0.3"), Decimal{5, 0}};
    series.pooling = SeriesPooling{true, {}};
    draft.make(bindToSeries(draft.document, "prawns", series, SeriesUse::Others));
    series.pooling = SeriesPooling{false, earlier};
    draft.make(bindToSeries(draft.document, "prawns", series, SeriesUse::Others));
    CHECK(draft.at("/series/prawn-meat-2/pooled") == "nothing");
    CHECK(draft.at("/series/prawn-meat-2/pooled_with") ==
          R"({"name":"prawn meat, 2025","nu":"5","s":"0.3"})");
    CHECK(followedSeries(draft.document).front().pooling->earlier == earlier);
    // A draft that follows its series, or binds another line to it, keeps what it is pooled with.
    chain.showOver(chainId(1), "224.2", pieceOf("Prawn meat"));
    draft.follow(seriesIn(chain));
    CHECK(draft.way("prawns").readings == 7);
    CHECK(followedSeries(draft.document).front().pooling->earlier == earlier);
    draft.make(bindToSeries(draft.document, "prawns", seriesIn(chain), SeriesUse::Among));
    CHECK(followedSeries(draft.document).front().pooling->earlier == earlier);
    series.pooling = SeriesPooling{};
    draft.make(bindToSeries(draft.document, "prawns", series, SeriesUse::Others));
    CHECK(draft.at("/series/prawn-meat-2/pooled_with") == "nothing");
}

TEST_CASE("a ratio is bound with what it is pooled with", "[edit][bench]") {
    Chain chain;
    const auto bowl = chain.show("100.0");
    const auto bought = chain.showOver(bowl, "350.0");
    LedgerEntry trimmed;
    trimmed.what = "fennel";
    trimmed.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, bought};
    chain.showOver(bowl, "287.5", trimmed);
    SeriesToBind series = seriesIn(chain, {"fennel", SeriesKind::Ratio, "edible / bought"});
    series.pooling =
        SeriesPooling{false, EarlierEntry{"fennel, 2025", decimal("0.03"), Decimal{4, 0}}};
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "fennel", series, SeriesUse::Others));
    const std::vector<SeriesToBind> followed = followedSeries(draft.document);
    REQUIRE(followed.size() == 1);
    CHECK(followed.front().pooling->earlier == series.pooling->earlier);
    const Dossier dossier = draft.dossier();
    // 3 % of the 250 g that were bought.
    const auto ratio = ratioOf(dossier, dossier.series.back(), {});
    CHECK(ratio->residualSpread == Approx(7.5));
    CHECK(ratio->freedom == 4);
}

TEST_CASE("spoons go by a series of that spoon, and by no other", "[edit][bench]") {
    Chain chain;
    LedgerEntry spoon = pieceOf("olive oil");
    spoon.series->kind = SeriesKind::PerMeasure;
    spoon.series->of = "tbsp";
    chain.showOver(chain.show("212.2"), "225.7", spoon);
    const SeriesToBind spoons = seriesIn(chain, {"olive oil", SeriesKind::PerMeasure, "tbsp"});
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "oil", spoons, SeriesUse::Others));
    CHECK(draft.way("oil").way == Way::Series);
    CHECK(draft.at("/lines/oil/amount") == R"("3")");
    CHECK(draft.way("oil").grams.value() == Approx(3 * 13.5));
    CHECK(refusedBinding("prawns", spoons) == ErrorCode::SeriesOfOther);
    CHECK(refusedBinding("oil", seriesIn(sixPrawns())) == ErrorCode::SeriesOfOther);
    CHECK(refusedBinding("nobody", spoons) == ErrorCode::UnknownReference);
    const auto other = bindToSeries(demo::skewers(), "oil", seriesIn(sixPrawns()), {});
    CHECK(other.error().value("wanted") == "tbsp");
    CHECK(other.error().value("found") == "prawn");
}

TEST_CASE("a series of which nothing counts binds no line", "[edit][bench]") {
    Chain chain;
    chain.say(EntryKind::LeftOut, chain.show("222.0", pieceOf("prawn meat")), "broken");
    CHECK(refusedBinding("prawns", seriesIn(chain)) == ErrorCode::SeriesEmpty);
}

TEST_CASE("an edible share of what was bought is the line's trim", "[edit][bench]") {
    Chain chain;
    const auto bowl = chain.show("100.0");
    const auto bought = chain.showOver(bowl, "350.0");
    LedgerEntry trimmed;
    trimmed.what = "fennel";
    trimmed.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, bought};
    chain.showOver(bowl, "287.5", trimmed);
    const SeriesKey key{"fennel", SeriesKind::Ratio, "edible / bought"};
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "fennel", seriesIn(chain, key), SeriesUse::Others));
    const std::string id = draft.at("/lines/fennel/trim");
    const std::string place = "/series/" + id.substr(1, id.size() - 2);
    CHECK(draft.at(place + "/pairs") ==
          R"([{"after":")" + chainId(3) + R"(","before":")" + chainId(2) + R"("}])");
    CHECK(draft.at(place + "/bench") == R"({"of":"edible / bought","what":"fennel"})");
    const Dossier dossier = draft.dossier();
    CHECK(ratioOf(dossier, dossier.series.back(), {})->ratio == Approx(0.75));
    // What was bought is read again: the pair has another reading before it now.
    LedgerEntry again;
    again.refersTo = bought;
    again.reason = "misread";
    chain.showOver(bowl, "400.0", again);
    draft.follow(seriesIn(chain, key));
    const Dossier after = draft.dossier();
    CHECK(ratioOf(after, after.series.back(), {})->ratio == Approx(0.625));
    chain.say(EntryKind::Superseded, chainId(3), "peel among it");
    draft.follow(seriesIn(chain, key));
    CHECK(draft.at("/lines/fennel/trim") == "nothing");
}

TEST_CASE("a pair whose first reading was taken back leaves the document's series",
          "[edit][bench]") {
    Chain chain;
    const auto bowl = chain.show("100.0");
    const auto trim = [&](const std::string& before, const char* shown) {
        LedgerEntry entry;
        entry.what = "fennel";
        entry.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, before};
        chain.showOver(bowl, shown, entry);
    };
    const auto first = chain.showOver(bowl, "350.0");
    trim(first, "287.5");
    trim(chain.showOver(bowl, "300.0"), "220.0");
    const SeriesKey key{"fennel", SeriesKind::Ratio, "edible / bought"};
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "fennel", seriesIn(chain, key), SeriesUse::Others));
    const std::string id = draft.at("/lines/fennel/trim");
    const std::string pairs = "/series/" + id.substr(1, id.size() - 2) + "/pairs";
    const std::string both = draft.at(pairs);
    chain.say(EntryKind::Superseded, first, "another bulb among them");
    draft.follow(seriesIn(chain, key));
    CHECK(draft.at(pairs) ==
          R"([{"after":")" + chainId(5) + R"(","before":")" + chainId(4) + R"("}])");
    const Dossier dossier = draft.dossier();
    CHECK(ratioOf(dossier, dossier.series.back(), {})->ratio == Approx(0.6));
    CHECK_FALSE(followSeries(draft.document, seriesIn(chain, key))->has_value());
    // Weighed anew, it is a pair again.
    LedgerEntry again;
    again.refersTo = first;
    again.reason = "without the other bulb";
    chain.showOver(bowl, "350.0", again);
    draft.follow(seriesIn(chain, key));
    CHECK(draft.at(pairs) != both);
    const Dossier after = draft.dossier();
    CHECK(ratioOf(after, after.series.back(), {})->ratio == Approx(307.5 / 450));
}

TEST_CASE("what is cooked of what is raw is the line's yield", "[edit][bench]") {
    Chain chain;
    const auto raw = chain.showOver(chain.show("0.0"), "200.0");
    LedgerEntry cooked;
    cooked.what = "prawns";
    cooked.state = WeighedState::Cooked;
    cooked.series = SeriesMark{SeriesKind::Ratio, "cooked / raw", {}, raw};
    chain.showOver(chainId(1), "170.0", cooked);
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "prawns",
                            seriesIn(chain, {"prawns", SeriesKind::Ratio, "cooked / raw"}),
                            SeriesUse::Others));
    CHECK(draft.at("/lines/prawns/yield") == R"({"series":"prawns","to":"cooked"})");
}

TEST_CASE("whatever the ledger does, a draft that follows it holds what counts", "[edit][bench]") {
    std::mt19937 random{20'261'127};
    Chain chain = sixPrawns();
    BoundDraft draft;
    draft.make(bindToSeries(draft.document, "prawns", seriesIn(chain), SeriesUse::Others));
    const std::vector<EntryKind> kinds{EntryKind::LeftOut, EntryKind::TakenIn,
                                       EntryKind::Superseded, EntryKind::Reasoned};
    for (int step = 0; step < 60; ++step) {
        const std::string one = chainId(2 + random() % (chain.entries.size() - 1));
        if (random() % 2 == 0)
            chain.showOver(chainId(1), "22" + std::to_string(random() % 10) + ".5",
                           pieceOf("prawn meat", 1 + static_cast<int>(random() % 3)));
        else
            chain.say(kinds[random() % kinds.size()], one, "because");
        const SeriesToBind series = seriesIn(chain);
        const auto edit = followSeries(draft.document, series);
        REQUIRE(edit);
        if (*edit) draft.make(**edit);
        std::vector<std::string> counted;
        for (const LedgerReading& reading : series.readings)
            if (reading.counts()) counted.push_back(reading.entry().id);
        std::vector<std::string> held;
        for (const Json& id : *valueAt(draft.document, "/series/prawn-meat-2/readings")->items())
            held.push_back(*id.text());
        std::ranges::sort(held);
        CHECK(held == counted);
        CHECK_FALSE(followSeries(draft.document, series)->has_value());
    }
}
