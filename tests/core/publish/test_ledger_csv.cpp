#include "core/publish/ledger_csv.h"

#include <catch2/catch.hpp>

#include <map>

#include "core/ledger/ledger_reading.h"
#include "ledger_chain.h"

using namespace nettare;

namespace {

/// The cells of a record, by the rules of RFC 4180, written from its grammar.
std::vector<std::string> cellsOf(std::string_view record) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < record.size(); ++i) {
        const char c = record[i];
        const bool twice = quoted && c == '"' && i + 1 < record.size() && record[i + 1] == '"';
        if (twice)
            cells.back() += record[i++];
        else if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            cells.emplace_back();
        else
            cells.back() += c;
    }
    return cells;
}

using LedgerRow = std::map<std::string, std::string>;

/// Each record of the ledger by its fields' names.
std::vector<LedgerRow> csvRows(const Chain& chain) {
    LedgerCsv csv;
    for (const ChainedEntry& entry : chain.entries) csv.survey(entry);
    const std::string header = LedgerCsv::header();
    const auto fields = cellsOf(std::string_view{header}.substr(0, header.size() - 2));
    std::vector<LedgerRow> rows;
    for (const ChainedEntry& entry : chain.entries) {
        const std::string record = csv.row(entry);
        REQUIRE(record.ends_with("\r\n"));
        const auto cells = cellsOf(std::string_view{record}.substr(0, record.size() - 2));
        REQUIRE(cells.size() == fields.size());
        LedgerRow row;
        for (std::size_t i = 0; i < cells.size(); ++i) row[fields[i]] = cells[i];
        rows.push_back(row);
    }
    return rows;
}

LedgerEntry called(const std::string& what, const std::string& why = {}) {
    LedgerEntry entry;
    entry.what = what;
    entry.why = why;
    return entry;
}

}  // namespace

TEST_CASE("the CSV of a ledger begins with its fields and ends its records with CR LF", "[csv]") {
    CHECK(LedgerCsv::header() ==
          "sequence,time,kind,origin,what,why,gross,tare,jar before,net,unit,readability,scale,"
          "vessel,pieces,state,series,of,tags,reading before,known mass,capacity,superseded by,"
          "reason,left out,suspect,tare taken back,before taken back,speaks "
          "of,recipe,id,hash,previous hash\r\n");
}

TEST_CASE("a record holds what the scale showed and what it comes to", "[csv]") {
    Chain chain;
    const auto bowl = chain.show("212.20");
    LedgerEntry prawns = pieceOf("prawn meat", 6);
    prawns.why = "edible portion";
    prawns.series->tags = {"size 16/20", "with head"};
    prawns.recipe = "skewers";
    chain.showOver(bowl, "271.1", prawns);
    chain.entries.back().previous = std::string(64, 'a');
    chain.entries.back().hash = std::string(64, 'b');
    LedgerCsv csv;
    for (const ChainedEntry& entry : chain.entries) csv.survey(entry);
    CHECK(csv.row(chain.entries[0]) ==
          "1,2026-05-16T15:41:07Z,shown,typed,,,212.20,,,,g,0.1,bench scale,,1,edible portion,,,,"
          ",,,,,,,,,,," +
              bowl + ",,\r\n");
    CHECK(csv.row(chain.entries[1]) ==
          "2,2026-05-16T15:41:07Z,shown,typed,prawn meat,edible portion,271.1,212.20,,58.90,g,0.1,"
          "bench scale,,6,edible portion,per piece,prawn,size 16/20; with head,,,,,,,,,,,skewers," +
              chainId(2) + "," + std::string(64, 'b') + "," + std::string(64, 'a') + "\r\n");
}

TEST_CASE("a text that looks like a formula gets an apostrophe, a number never does", "[csv]") {
    Chain chain;
    for (const char* what : {"=1+1", "+12", "-1", "@sum", "\tx", "“=1+1”", "1=1"})
        chain.show("-3.5", called(what));
    const auto rows = csvRows(chain);
    CHECK(rows[0].at("what") == "'=1+1");
    CHECK(rows[1].at("what") == "'+12");
    CHECK(rows[2].at("what") == "'-1");
    CHECK(rows[3].at("what") == "'@sum");
    CHECK(rows[4].at("what") == "'\tx");
    CHECK(rows[5].at("what") == "“=1+1”");
    CHECK(rows[6].at("what") == "1=1");
    CHECK(rows[2].at("gross") == "-3.5");
}

TEST_CASE("commas, quotes and line ends stay inside their cell", "[csv]") {
    Chain chain;
    chain.show("1.0", called("prawns, \"jumbo\"", "two\r\nlines"));
    const auto row = csvRows(chain).front();
    CHECK(row.at("what") == "prawns, \"jumbo\"");
    CHECK(row.at("why") == "two\r\nlines");
    CHECK(row.at("gross") == "1.0");
}

TEST_CASE("the record of a ratio is in doubt with what went in", "[csv]") {
    Chain chain;
    LedgerEntry onFloor;
    onFloor.scale = "floor scale";
    const auto bought = chain.showOver(chain.show("0.0", onFloor), "350.0", onFloor);
    const auto bowl = chain.show("0.0");
    LedgerEntry trimmed = called("corn kernels");
    trimmed.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, bought};
    chain.showOver(bowl, "152.0", trimmed);
    CHECK(csvRows(chain)[3].at("suspect").empty());
    chain.check("100.0", "103.0", "floor scale");
    CHECK(csvRows(chain)[3].at("suspect") == "yes");
    LedgerEntry again = called("corn");
    again.refersTo = bought;
    again.reason = "misread";
    chain.showOver(bowl, "352.0", again);
    CHECK(csvRows(chain)[3].at("suspect").empty());
    chain.check("100.0", "103.0");
    CHECK(csvRows(chain)[5].at("suspect") == "yes");
    CHECK(csvRows(chain)[3].at("suspect") == "yes");
}

TEST_CASE("a record says why its tare, or what went in, no longer stands", "[csv]") {
    Chain chain;
    const auto bowl = chain.show("100.0");
    const auto bought = chain.showOver(bowl, "350.0");
    LedgerEntry trimmed = called("corn kernels");
    trimmed.series = SeriesMark{SeriesKind::Ratio, "edible / bought", {}, bought};
    chain.showOver(bowl, "252.0", trimmed);
    CHECK(csvRows(chain)[2].at("tare taken back").empty());
    LedgerEntry again = called("corn");
    again.refersTo = bought;
    again.reason = "misread";
    const auto better = chain.showOver(bowl, "352.0", again);
    CHECK(csvRows(chain)[2].at("before taken back").empty());
    chain.say(EntryKind::Superseded, better, "the wrong ears");
    chain.say(EntryKind::Superseded, bowl, "=a spoon in it");
    const auto rows = csvRows(chain);
    CHECK(rows[2].at("before taken back") == "the wrong ears");
    CHECK(rows[2].at("tare taken back") == "'=a spoon in it");
    CHECK(rows[2].at("net") == "152.0");
    CHECK(rows[1].at("before taken back").empty());
    CHECK(rows[0].at("tare taken back").empty());
}

TEST_CASE("a record says what came after it in the chain", "[csv]") {
    Chain chain;
    const auto bowl = chain.show("212.2");
    const auto slip = chain.showOver(bowl, "217.1");
    const auto prawn = chain.showOver(bowl, "224.2", pieceOf("prawn meat"));
    const auto back = chain.say(EntryKind::Superseded, slip, "slip of the hand");
    const auto left = chain.say(EntryKind::LeftOut, prawn, "broken");
    chain.say(EntryKind::Reasoned, back, "misread");
    const auto rows = csvRows(chain);
    CHECK(rows[1].at("superseded by") == back);
    CHECK(rows[1].at("reason") == "misread");
    CHECK(rows[1].at("net") == "4.9");
    CHECK(rows[2].at("left out") == "yes");
    CHECK(rows[2].at("reason") == "broken");
    CHECK(rows[0].at("left out").empty());
    CHECK(rows[3].at("kind") == "superseded");
    CHECK(rows[3].at("speaks of") == slip);
    CHECK(rows[3].at("reason") == "slip of the hand");
    CHECK(rows[3].at("gross").empty());
    CHECK(rows[5].at("kind") == "reason");
    CHECK(rows[4].at("id") == left);
}

TEST_CASE("vessels, jars and checks have their numbers in the record", "[csv]") {
    Chain chain;
    LedgerEntry known;
    known.vessel = "steel bowl";
    known.vesselTare = decimal("212.2");
    chain.show("222.0", known);
    LedgerEntry poured;
    poured.takenFrom = chain.show("412.6");
    chain.show("371.1", poured);
    chain.check("100.0", "102.0");
    const auto rows = csvRows(chain);
    CHECK(rows[0].at("tare") == "212.2");
    CHECK(rows[0].at("net") == "9.8");
    CHECK(rows[2].at("jar before") == "412.6");
    CHECK(rows[2].at("gross") == "371.1");
    CHECK(rows[2].at("net") == "41.5");
    CHECK(rows[2].at("tare").empty());
    CHECK(rows[3].at("known mass") == "100.0");
    CHECK(rows[3].at("gross") == "102.0");
    CHECK(rows[3].at("pieces").empty());
    CHECK(rows[2].at("suspect") == "yes");
    CHECK(rows[3].at("suspect").empty());
}

TEST_CASE("a tare in another unit leaves the net of a record open", "[csv]") {
    Chain chain;
    LedgerEntry ounces;
    ounces.unit = "oz";
    chain.showOver(chain.show("7.50", ounces), "271.1");
    const auto rows = csvRows(chain);
    CHECK(rows[1].at("tare") == "7.50");
    CHECK(rows[1].at("net").empty());
}

TEST_CASE("the CSV and the ledger's readings tell the same of every entry", "[csv]") {
    Chain chain;
    auto last = chain.show("100.0");
    for (int i = 1; i <= 60; ++i) {
        last = chain.showOver(last, std::to_string(100 + i * 7) + ".5", pieceOf("prawn meat"));
        if (i % 7 == 0) chain.say(EntryKind::Superseded, last, "slip");
        if (i % 11 == 0) chain.say(EntryKind::LeftOut, last, "odd");
        if (i % 22 == 0) chain.say(EntryKind::TakenIn, last, "not odd");
        if (i % 13 == 0) chain.check("50.0", i % 2 == 0 ? "50.0" : "55.0");
    }
    const auto rows = csvRows(chain);
    for (const LedgerReading& reading : readingsOf(chain.entries, ScaleChecks{chain.entries})) {
        const LedgerRow& row = rows[static_cast<std::size_t>(reading.chained.sequence - 1)];
        CHECK(row.at("net") == (reading.net ? reading.net->text() : ""));
        CHECK(row.at("tare") == (reading.tare ? reading.tare->text() : ""));
        CHECK(row.at("superseded by") == reading.supersededBy);
        CHECK(row.at("left out") == (reading.leftOut ? "yes" : ""));
        CHECK(row.at("suspect") == (reading.suspect ? "yes" : ""));
        CHECK(row.at("reason") == reading.reason);
        CHECK(row.at("tare taken back") == reading.tareReason);
        CHECK(row.at("before taken back") == reading.beforeReason);
    }
}
