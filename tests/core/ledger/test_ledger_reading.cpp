#include "core/ledger/ledger_reading.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <random>

#include "ledger_chain.h"

using namespace nettare;

namespace {

std::vector<LedgerReading> readingsIn(const Chain& chain) {
    return readingsOf(chain.entries, ScaleChecks{chain.entries});
}

/// The reading of an id; its number counts indications and others alike.
LedgerReading readingOf(const Chain& chain, const std::string& id) {
    for (const LedgerReading& reading : readingsIn(chain))
        if (reading.entry().id == id) return reading;
    FAIL("no reading " << id);
    return {};
}

std::string netTextOf(const Chain& chain, const std::string& id) {
    const auto net = readingOf(chain, id).net;
    return net ? net->text() : "none";
}

LedgerEntry ounces() {
    LedgerEntry entry;
    entry.unit = "oz";
    entry.readability = decimal("0.05");
    return entry;
}

}  // namespace

TEST_CASE("a net is what the scale showed less its tare, digit for digit", "[ledger]") {
    Chain chain;
    const auto bowl = chain.show("212.2");
    const auto filled = chain.showOver(bowl, "271.1");
    CHECK(netTextOf(chain, filled) == "58.9");
    CHECK(netTextOf(chain, bowl) == "none");
    CHECK(readingOf(chain, bowl).usedAsTare);
    CHECK(readingOf(chain, filled).tare == decimal("212.2"));
    CHECK_FALSE(readingOf(chain, filled).usedAsTare);
    CHECK(netGrams(readingOf(chain, filled)).value() == 58.9);
    CHECK_FALSE(netGrams(readingOf(chain, bowl)));
}

TEST_CASE("a vessel's known tare is taken off without an indication of its own", "[ledger]") {
    Chain chain;
    LedgerEntry entry;
    entry.vessel = "steel bowl";
    entry.vesselTare = decimal("212.2");
    const auto filled = chain.show("222.0", entry);
    CHECK(netTextOf(chain, filled) == "9.8");
    CHECK(roundingGrams(readingOf(chain, filled)) == Approx(0.1 / std::sqrt(6)));
}

TEST_CASE("what left the jar is what it showed before less what it shows now", "[ledger]") {
    Chain chain;
    const auto before = chain.show("412.6");
    LedgerEntry entry;
    entry.takenFrom = before;
    const auto after = chain.show("371.1", entry);
    CHECK(netTextOf(chain, after) == "41.5");
    CHECK_FALSE(readingOf(chain, after).tare);
    CHECK(readingOf(chain, before).usedAsTare);
}

TEST_CASE("a net of two units is unknown, and so is one whose tare is not at hand", "[ledger]") {
    Chain chain;
    const auto bowl = chain.show("7.50", ounces());
    CHECK(netTextOf(chain, chain.showOver(bowl, "271.1")) == "none");
    CHECK(netTextOf(chain, chain.showOver(chainId(77), "271.1")) == "none");
    CHECK(netTextOf(chain, chain.showOver(bowl, "9.55", ounces())) == "2.05");
    CHECK(netGrams(readingOf(chain, chainId(4))).value() == Approx(2.05 * 28.349523125));
}

TEST_CASE("additions to one bowl sum to its last indication less its first, exactly", "[ledger]") {
    std::mt19937 random{20'261'127};
    for (int run = 0; run < 50; ++run) {
        Chain chain;
        auto tenths = static_cast<std::int64_t>(2000 + random() % 3000);
        const Decimal first{tenths, -1};
        std::string last = chain.show(first.text());
        const auto additions = 2 + random() % 30;
        for (unsigned i = 0; i < additions; ++i) {
            tenths += static_cast<std::int64_t>(1 + random() % 9999);
            last = chain.showOver(last, Decimal{tenths, -1}.text());
        }
        Decimal sum;
        const auto readings = readingsIn(chain);
        for (std::size_t i = 1; i < readings.size(); ++i) {
            sum = sum.plus(readings[i].net.value());
            // Neighbours share an indication: what one ended with is the other's tare.
            CHECK(readings[i].tare == readings[i - 1].entry().shown);
            CHECK(readings[i - 1].usedAsTare);
        }
        CHECK(sum == readings.back().entry().shown.minus(first));
    }
}

TEST_CASE("a reading that was taken back keeps its numbers and says why", "[ledger]") {
    Chain chain;
    const auto bowl = chain.show("212.2");
    const auto slip = chain.showOver(bowl, "217.1");
    const auto taken = chain.say(EntryKind::Superseded, slip, "slip of the hand");
    auto reading = readingOf(chain, slip);
    CHECK(netTextOf(chain, slip) == "4.9");
    CHECK(reading.supersededBy == taken);
    CHECK(reading.successor.empty());
    CHECK(reading.reason == "slip of the hand");
    CHECK_FALSE(reading.counts());
    chain.say(EntryKind::Reasoned, taken, "two digits changed places");
    CHECK(readingOf(chain, slip).reason == "two digits changed places");
    chain.say(EntryKind::Reasoned, slip, "a thumb on the scale");
    CHECK(readingOf(chain, slip).reason == "a thumb on the scale");
}

TEST_CASE("a correction names the reading whose place it takes", "[ledger]") {
    Chain chain;
    const auto bowl = chain.show("212.2");
    const auto slip = chain.showOver(bowl, "217.1");
    LedgerEntry corrected;
    corrected.refersTo = slip;
    corrected.reason = "misread";
    const auto right = chain.showOver(bowl, "271.1", corrected);
    CHECK(readingOf(chain, slip).successor == right);
    CHECK(readingOf(chain, slip).supersededBy == right);
    CHECK(readingOf(chain, slip).reason == "misread");
    CHECK(readingOf(chain, right).counts());
    CHECK(readingOf(chain, right).reason.empty());
    // A new reason for the correction is of the slip, until the correction is taken back itself.
    chain.say(EntryKind::Reasoned, right, "read from the side");
    CHECK(readingOf(chain, slip).reason == "read from the side");
    chain.say(EntryKind::Superseded, right, "wrong bowl");
    chain.say(EntryKind::Reasoned, right, "the wrong bowl stood there");
    CHECK(readingOf(chain, slip).reason == "read from the side");
    CHECK(readingOf(chain, right).reason == "the wrong bowl stood there");
}

TEST_CASE("of two entries that take a reading back the first one counts", "[ledger]") {
    Chain chain;
    const auto slip = chain.show("217.1");
    const auto first = chain.say(EntryKind::Superseded, slip, "first");
    chain.say(EntryKind::Superseded, slip, "second");
    CHECK(readingOf(chain, slip).supersededBy == first);
    CHECK(readingOf(chain, slip).reason == "first");
}

TEST_CASE("a reading whose tare was taken back says so and stays as it was recorded", "[ledger]") {
    Chain chain;
    const auto bowl = chain.show("212.2");
    const auto filled = chain.showOver(bowl, "271.1");
    CHECK_FALSE(readingOf(chain, filled).tareOverruled);
    chain.say(EntryKind::Superseded, bowl, "spoon in it");
    CHECK(readingOf(chain, filled).tareOverruled);
    CHECK(readingOf(chain, filled).tareReason == "spoon in it");
    CHECK(netTextOf(chain, filled) == "58.9");
    CHECK(readingOf(chain, filled).counts());
}

TEST_CASE("a reading is left out with its cause and taken in again", "[ledger]") {
    Chain chain;
    const auto prawn = chain.show("12.0", pieceOf("Prawn meat"));
    const auto left = chain.say(EntryKind::LeftOut, prawn, "a small one");
    CHECK(readingOf(chain, prawn).leftOut);
    CHECK_FALSE(readingOf(chain, prawn).counts());
    CHECK(readingOf(chain, prawn).reason == "a small one");
    chain.say(EntryKind::Reasoned, left, "of another lot");
    CHECK(readingOf(chain, prawn).reason == "of another lot");
    chain.say(EntryKind::TakenIn, prawn, "it was of the lot");
    CHECK(readingOf(chain, prawn).counts());
    CHECK(readingOf(chain, prawn).reason.empty());
    chain.say(EntryKind::LeftOut, prawn, "broken");
    CHECK(readingOf(chain, prawn).reason == "broken");
    chain.say(EntryKind::TakenIn, chainId(5), "whole after all");
    CHECK(readingOf(chain, prawn).counts());
}

TEST_CASE("an entry that speaks of something unknown changes nothing", "[ledger]") {
    Chain chain;
    chain.show("12.0");
    for (const EntryKind kind :
         {EntryKind::Superseded, EntryKind::LeftOut, EntryKind::TakenIn, EntryKind::Reasoned})
        chain.say(kind, chainId(99), "of nothing");
    CHECK(readingsIn(chain).size() == 1);
    CHECK(readingsIn(chain).front().counts());
}

TEST_CASE("a ratio's reading knows the net of the one before it", "[ledger]") {
    Chain chain;
    const auto bowl = chain.show("100.0");
    const auto bought = chain.showOver(bowl, "350.0");
    LedgerEntry trimmed;
    trimmed.what = "corn kernels";
    trimmed.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, bought};
    const auto edible = chain.showOver(bowl, "252.0", trimmed);
    CHECK(readingOf(chain, edible).before.value().text() == "250.0");
    LedgerEntry corrected;
    corrected.refersTo = bought;
    corrected.reason = "misread";
    chain.showOver(bowl, "353.0", corrected);
    CHECK(readingOf(chain, edible).before.value().text() == "253.0");
    CHECK_FALSE(readingOf(chain, edible).beforeOverruled);
    CHECK(readingOf(chain, edible).countsInSeries());
    chain.say(EntryKind::Superseded, chainId(4), "the wrong ears");
    CHECK_FALSE(readingOf(chain, edible).before);
    CHECK(readingOf(chain, edible).beforeOverruled);
    CHECK(readingOf(chain, edible).beforeReason == "the wrong ears");
    CHECK(readingOf(chain, edible).counts());
    CHECK_FALSE(readingOf(chain, edible).countsInSeries());
}

TEST_CASE("what went in may be weighed on a scale of another unit", "[ledger]") {
    Chain chain;
    const auto bowl = chain.show("0.00", ounces());
    const auto bought = chain.showOver(bowl, "8.00", ounces());
    const auto plate = chain.show("0.0");
    LedgerEntry trimmed;
    trimmed.what = "corn kernels";
    trimmed.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, bought};
    const auto edible = chain.showOver(plate, "152.0", trimmed);
    CHECK(readingOf(chain, edible).before.value().value() == Approx(226.796185));
}

TEST_CASE("a check that fails doubts what the scale showed since its last good one", "[ledger]") {
    Chain chain;
    const auto old = chain.show("50.0");
    chain.check("100.0", "100.0");
    const auto doubted = chain.show("50.0");
    LedgerEntry elsewhere;
    elsewhere.scale = "pocket scale";
    const auto other = chain.show("50.0", elsewhere);
    CHECK_FALSE(readingOf(chain, doubted).suspect);
    const auto failed = chain.check("100.0", "101.0");
    const auto after = chain.show("50.0");
    CHECK_FALSE(readingOf(chain, old).suspect);
    CHECK(readingOf(chain, doubted).suspect);
    CHECK(readingOf(chain, after).suspect);
    CHECK_FALSE(readingOf(chain, other).suspect);
    CHECK_FALSE(readingOf(chain, failed).suspect);
    chain.check("100.0", "100.1");
    CHECK(readingOf(chain, doubted).suspect);
    CHECK(readingOf(chain, after).suspect);
    CHECK_FALSE(readingOf(chain, chain.show("50.0")).suspect);
}

TEST_CASE("a net is in doubt with its tare", "[ledger]") {
    Chain chain;
    const auto bowl = chain.show("212.2");
    chain.check("100.0", "103.0");
    chain.check("100.0", "100.0");
    CHECK(readingOf(chain, chain.showOver(bowl, "271.1")).suspect);
}

TEST_CASE("a vessel that was weighed on another scale brings that one's rounding", "[ledger]") {
    Chain chain;
    LedgerEntry empty;
    empty.kind = EntryKind::Vessel;
    empty.vessel = "steel bowl";
    empty.scale = "floor scale";
    empty.unit = "g";
    empty.readability = decimal("1");
    empty.shown = decimal("212");
    const auto bowl = chain.add(empty);
    LedgerEntry filled;
    filled.vessel = "steel bowl";
    filled.vesselTare = decimal("212");
    const auto alone = chain.show("271.1", filled);
    const auto over = chain.showOver(bowl, "271.1", filled);
    CHECK(netTextOf(chain, alone) == "59.1");
    CHECK(netTextOf(chain, over) == "59.1");
    // By hand: 0.1/sqrt(12) twice is 0.0408 g; with 1/sqrt(12) in place of one it is 0.2901 g.
    CHECK(roundingGrams(readingOf(chain, alone)) == Approx(0.0408).epsilon(0.001));
    CHECK(roundingGrams(readingOf(chain, over)) == Approx(0.2901).epsilon(0.001));
    chain.check("500", "510", "floor scale");
    CHECK(readingOf(chain, over).suspect);
    CHECK_FALSE(readingOf(chain, alone).suspect);
}

TEST_CASE("a ratio is in doubt with what went in", "[ledger]") {
    Chain chain;
    LedgerEntry onFloor;
    onFloor.scale = "floor scale";
    const auto sack = chain.show("0.0", onFloor);
    const auto bought = chain.showOver(sack, "350.0", onFloor);
    const auto bowl = chain.show("0.0");
    LedgerEntry trimmed;
    trimmed.what = "corn kernels";
    trimmed.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, bought};
    const auto edible = chain.showOver(bowl, "152.0", trimmed);
    CHECK_FALSE(readingOf(chain, edible).suspect);
    LedgerEntry again = onFloor;
    again.refersTo = bought;
    again.reason = "misread";
    chain.check("100.0", "103.0", "floor scale");
    CHECK(readingOf(chain, edible).suspect);
    chain.check("100.0", "100.0", "floor scale");
    CHECK(readingOf(chain, edible).suspect);
    // What took its place was weighed on the good scale.
    chain.showOver(bowl, "352.0", again);
    const auto better = chain.entries.back().entry.id;
    CHECK_FALSE(readingOf(chain, better).suspect);
    CHECK_FALSE(readingOf(chain, edible).suspect);
}

TEST_CASE("an odd reading that counts is as weighed once the cook said so", "[ledger]") {
    Chain chain;
    const auto prawn = chain.show("14.2", pieceOf("prawn meat"));
    CHECK_FALSE(readingOf(chain, prawn).asWeighed);
    chain.say(EntryKind::TakenIn, prawn, "it is as weighed");
    CHECK(readingOf(chain, prawn).asWeighed);
    CHECK(readingOf(chain, prawn).counts());
    CHECK(readingOf(chain, prawn).reason.empty());
    // What is left out for a cause and taken in later is asked about anew.
    chain.say(EntryKind::LeftOut, prawn, "with its head");
    CHECK_FALSE(readingOf(chain, prawn).asWeighed);
    chain.say(EntryKind::TakenIn, prawn, "counts after all");
    CHECK_FALSE(readingOf(chain, prawn).asWeighed);
    CHECK(readingOf(chain, prawn).counts());
    chain.say(EntryKind::TakenIn, prawn, "it is as weighed");
    CHECK(readingOf(chain, prawn).asWeighed);
}

TEST_CASE("a correction is as weighed itself, not what it corrects", "[ledger]") {
    Chain chain;
    const auto slip = chain.show("41.2", pieceOf("prawn meat"));
    chain.say(EntryKind::LeftOut, slip, "odd");
    LedgerEntry corrected = pieceOf("prawn meat");
    corrected.refersTo = slip;
    corrected.reason = "misread";
    const auto right = chain.show("14.2", corrected);
    chain.say(EntryKind::TakenIn, right, "it is as weighed");
    CHECK(readingOf(chain, right).asWeighed);
    CHECK_FALSE(readingOf(chain, slip).asWeighed);
    CHECK(readingOf(chain, slip).leftOut);
}

TEST_CASE("a check that was mistyped and taken back doubts nothing", "[ledger]") {
    Chain chain;
    chain.check("100.0", "100.0");
    const auto shown = chain.show("50.0");
    const auto slip = chain.check("100.0", "10.0");
    CHECK(readingOf(chain, shown).suspect);
    chain.say(EntryKind::Superseded, slip, "a digit is missing");
    CHECK_FALSE(readingOf(chain, shown).suspect);
}

TEST_CASE("foods of a series are the same in whatever case of the letters a to z", "[ledger]") {
    CHECK(foldedWhat("Prawn Meat") == "prawn meat");
    CHECK(foldedWhat("Crème FRAÎCHE") == "crème fraÎche");
    CHECK(foldedWhat("").empty());
    const SeriesKey key{"Prawn meat", SeriesKind::PerPiece, "prawn"};
    CHECK(sameSeries(key, {"PRAWN MEAT", SeriesKind::PerPiece, "prawn"}));
    CHECK_FALSE(sameSeries(key, {"prawn meat", SeriesKind::PerPiece, "tail"}));
    CHECK_FALSE(
        sameSeries({"Ähre", SeriesKind::PerPiece, "ear"}, {"ähre", SeriesKind::PerPiece, "ear"}));
    CHECK_FALSE(sameSeries(key, {"prawn meat", SeriesKind::PerMeasure, "prawn"}));
    CHECK_FALSE(sameSeries(key, {"prawn", SeriesKind::PerPiece, "prawn"}));
}

TEST_CASE("only a shown entry of a food belongs to a series", "[ledger]") {
    LedgerEntry entry = pieceOf("Prawn meat");
    CHECK(seriesKeyOf(entry) == SeriesKey{"Prawn meat", SeriesKind::PerPiece, "prawn"});
    entry.what.clear();
    CHECK_FALSE(seriesKeyOf(entry));
    entry = pieceOf("Prawn meat");
    entry.series.reset();
    CHECK_FALSE(seriesKeyOf(entry));
    entry = pieceOf("Prawn meat");
    entry.kind = EntryKind::Vessel;
    CHECK_FALSE(seriesKeyOf(entry));
}

TEST_CASE("rounding of a net is that of its two indications", "[ledger]") {
    Chain chain;
    const auto bowl = chain.show("7.50", ounces());
    const auto filled = chain.showOver(bowl, "9.55", ounces());
    const double step = 0.05 * 28.349523125;
    CHECK(roundingGrams(readingOf(chain, filled)) == Approx(step / std::sqrt(6)));
    CHECK(roundingGrams(readingOf(chain, bowl)) == Approx(step / std::sqrt(12)));
    LedgerEntry coarse;
    coarse.readability = decimal("1");
    const auto plate = chain.show("100", coarse);
    CHECK(roundingGrams(readingOf(chain, chain.showOver(plate, "120.0"))) ==
          Approx(std::sqrt((0.01 + 1) / 12)));
}
