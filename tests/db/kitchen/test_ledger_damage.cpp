#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <catch2/catch.hpp>
#include <random>

#include "bench_work.h"
#include "core/support/sha256.h"
#include "one_kitchen.h"

using namespace nettare;

namespace {

constexpr int kEntries = 200;

struct StoredRow {
    std::int64_t sequence = 0;
    std::string entry, hash;
};

/// A kitchen whose ledger can be damaged and mended from outside. SQLite's triggers and
/// unique indexes stand aside; what `verify` has to say is about the rows.
class DamagedLedger {
public:
    DamagedLedger() {
        Kitchen kitchen = one_.open();
        BenchWork work{5};
        for (int i = 0; i < kEntries; ++i) REQUIRE(kitchen.record(work.next()));
        SQLite::Database database{one_.path(), SQLite::OPEN_READWRITE};
        SQLite::Statement row{database, "SELECT sequence, entry, hash FROM ledger"};
        while (row.executeStep())
            sound_.push_back({row.getColumn(0).getInt64(), row.getColumn(1).getString(),
                              row.getColumn(2).getString()});
        row.reset();
        database.exec(
            "DROP TRIGGER ledger_is_a_chain; DROP TRIGGER ledger_is_not_edited; "
            "DROP TRIGGER ledger_is_not_shortened; DROP TRIGGER ledger_end_follows");
    }

    [[nodiscard]] const std::vector<StoredRow>& sound() const { return sound_; }

    /// The first entry that `verify` names with these rows in the file; 0 where it names none.
    [[nodiscard]] std::int64_t firstBad(const std::vector<StoredRow>& rows) const {
        write(rows);
        const auto check = one_.open().verify();
        REQUIRE(check);
        for (const Error& fault : check->faults)
            if (fault.code == ErrorCode::LedgerBroken)
                return std::stoll(std::string{fault.value("found")});
        return 0;
    }

private:
    void write(const std::vector<StoredRow>& rows) const {
        SQLite::Database database{one_.path(), SQLite::OPEN_READWRITE};
        database.exec("PRAGMA synchronous = OFF");
        SQLite::Transaction transaction{database};
        database.exec("PRAGMA ignore_check_constraints = ON; DELETE FROM ledger");
        SQLite::Statement insert{database,
                                 "INSERT OR REPLACE INTO ledger (sequence, hash, entry) "
                                 "VALUES (?, ?, ?)"};
        for (const StoredRow& row : rows) {
            insert.bind(1, row.sequence);
            insert.bind(2, row.hash);
            insert.bind(3, row.entry);
            insert.exec();
            insert.reset();
        }
        transaction.commit();
    }

    OneKitchen one_;
    std::vector<StoredRow> sound_;
};

/// Rows as somebody changed them, and the first entry that is not what was recorded.
struct Corruption {
    std::vector<StoredRow> rows;
    std::int64_t firstBad = 0;
};

std::size_t placeIn(std::mt19937& random, std::size_t least = 0) {
    return least + random() % (kEntries - least);
}

Corruption byteChanged(std::vector<StoredRow> rows, std::mt19937& random) {
    const std::size_t at = placeIn(random);
    std::string& text = random() % 4 == 0 ? rows[at].hash : rows[at].entry;
    const std::size_t byte = random() % text.size();
    text[byte] = text[byte] == 'x' ? 'y' : 'x';
    return {std::move(rows), static_cast<std::int64_t>(at) + 1};
}

/// With the hash that fits it, as a forger would; the next entry then names another one.
Corruption entryForged(std::vector<StoredRow> rows, std::mt19937& random) {
    const std::size_t at = placeIn(random);
    const std::size_t place = rows[at].entry.find("2026-") + 3;
    rows[at].entry[place] = '5';
    rows[at].hash = sha256(rows[at].entry);
    const bool last = at + 1 == rows.size();
    return {std::move(rows), static_cast<std::int64_t>(at) + (last ? 1 : 2)};
}

Corruption entryDeleted(std::vector<StoredRow> rows, std::mt19937& random) {
    const std::size_t at = placeIn(random);
    rows.erase(rows.begin() + static_cast<std::ptrdiff_t>(at));
    // Sometimes the others close the gap.
    if (random() % 2 == 0)
        for (std::size_t i = at; i < rows.size(); ++i) --rows[i].sequence;
    return {std::move(rows), static_cast<std::int64_t>(at) + 1};
}

Corruption entryInserted(std::vector<StoredRow> rows, std::mt19937& random) {
    const std::size_t at = placeIn(random);
    StoredRow more = rows[placeIn(random)];
    more.entry.replace(more.entry.find("\"id\":") + 6, 9, "\"ffffffff");
    more.hash = sha256(more.entry);
    more.sequence = static_cast<std::int64_t>(at) + 1;
    for (std::size_t i = at; i < rows.size(); ++i) ++rows[i].sequence;
    rows.insert(rows.begin() + static_cast<std::ptrdiff_t>(at), more);
    return {std::move(rows), static_cast<std::int64_t>(at) + 1};
}

Corruption entriesSwapped(std::vector<StoredRow> rows, std::mt19937& random) {
    const std::size_t first = placeIn(random) % (kEntries - 1);
    const std::size_t second = placeIn(random, first + 1);
    std::swap(rows[first].entry, rows[second].entry);
    if (random() % 2 == 0) std::swap(rows[first].hash, rows[second].hash);
    return {std::move(rows), static_cast<std::int64_t>(first) + 1};
}

Corruption tailCut(std::vector<StoredRow> rows, std::mt19937& random) {
    rows.resize(placeIn(random));
    const auto left = static_cast<std::int64_t>(rows.size());
    return {std::move(rows), left + 1};
}

}  // namespace

TEST_CASE("whatever is done to a ledger 500 times, the first bad entry is named",
          "[kitchen][verify]") {
    const DamagedLedger ledger;
    REQUIRE(ledger.sound().size() == kEntries);
    CHECK(ledger.firstBad(ledger.sound()) == 0);
    constexpr std::array kWays{byteChanged,   entryForged,    entryDeleted,
                               entryInserted, entriesSwapped, tailCut};
    std::mt19937 random{20260516};
    for (std::size_t i = 0; i < 500; ++i) {
        const Corruption corruption = kWays[i % kWays.size()](ledger.sound(), random);
        const std::int64_t found = ledger.firstBad(corruption.rows);
        if (found != corruption.firstBad)
            FAIL("corruption " << i << " of way " << i % kWays.size() << " names " << found
                               << " instead of " << corruption.firstBad);
    }
    CHECK(ledger.firstBad(ledger.sound()) == 0);
}

TEST_CASE("a ledger that went on after its end was lost still tells so", "[kitchen][verify]") {
    const OneKitchen one;
    BenchWork work{3};
    {
        Kitchen kitchen = one.open();
        for (int i = 0; i < 20; ++i) REQUIRE(kitchen.record(work.next()));
    }
    runSql(one.path(),
           "DROP TRIGGER ledger_is_not_shortened; DELETE FROM ledger WHERE sequence > 17");
    LedgerEntry entry;
    entry.kind = EntryKind::Scale;
    entry.id = "00000000-0000-4000-8000-000000000001";
    entry.at = kNoon;
    entry.scale = "pocket scale";
    entry.unit = "g";
    entry.readability = Decimal{1, -1};
    REQUIRE(one.open().record(entry));
    const auto check = one.open().verify();
    REQUIRE(check->faults.size() == 1);
    CHECK(check->faults[0].code == ErrorCode::LedgerBroken);
    CHECK(check->faults[0].value("found") == "18");
}

TEST_CASE("an end that was cut off, and its note with it, is named by the lists",
          "[kitchen][verify]") {
    const OneKitchen one;
    {
        Kitchen kitchen = one.open();
        BenchWork work{3};
        for (int i = 0; i < 30; ++i) REQUIRE(kitchen.record(work.next()));
    }
    runSql(one.path(),
           "DROP TRIGGER ledger_is_not_shortened; DELETE FROM ledger WHERE sequence > 20; UPDATE "
           "ledger_end SET sequence = 20, hash = (SELECT hash FROM ledger WHERE sequence = 20)");
    const auto check = one.open().verify();
    REQUIRE(check->faults.size() == 1);
    CHECK(check->faults[0].code == ErrorCode::LedgerBroken);
    CHECK(check->faults[0].value("found") == "21");
}

TEST_CASE("an index that does not list what the ledger holds is a fault", "[kitchen][verify]") {
    OneKitchen one;
    {
        Kitchen kitchen = one.open();
        BenchWork work{3};
        REQUIRE(kitchen.together([&]() -> Result<void> {
            for (int i = 0; i < 300; ++i) REQUIRE(kitchen.record(work.next()));
            return {};
        }));
        REQUIRE(kitchen.verify()->faults.empty());
    }
    const auto [sql, found] = GENERATE(table<const char*, const char*>({
        {"DELETE FROM ledger_reference WHERE sequence = (SELECT max(sequence) FROM "
         "ledger_reference)",
         "the table ledger_reference"},
        {"UPDATE ledger_equipment SET sequence = 2 WHERE sequence = 1",
         "the table ledger_equipment"},
        {"DELETE FROM series_entry WHERE sequence = (SELECT max(sequence) FROM series_entry)",
         "the list of series"},
        {"UPDATE series SET readings = readings + 1", "the list of series"},
        {"UPDATE series SET folded = 'lime' WHERE id = 1", "the list of series"},
        {"UPDATE series SET what = 'Squid' WHERE id = 1", "the list of series"},
        {"UPDATE series SET what = upper(what) WHERE id = 1", "the list of series"},
        {"UPDATE series_tag SET tag = 'frozen' WHERE tag = 'peeled'", "the list of series"},
        {"DROP INDEX ledger_by_id; CREATE UNIQUE INDEX ledger_by_id ON ledger (id) WHERE "
         "sequence <> 7; PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = 'CREATE "
         "UNIQUE INDEX ledger_by_id ON ledger (id)' WHERE name = 'ledger_by_id'",
         "the index ledger_by_id"},
        {"DROP INDEX ledger_by_indication; CREATE INDEX ledger_by_indication ON ledger (recipe, "
         "id); PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = 'CREATE INDEX "
         "ledger_by_indication ON ledger (recipe, indication)' WHERE name = "
         "'ledger_by_indication'",
         "the index ledger_by_indication"},
    }));
    INFO(sql);
    one.leaveUnchecked();
    runSql(one.path(), sql);
    const auto check = one.open().verify();
    REQUIRE_FALSE(check->faults.empty());
    CHECK(check->faults[0].code == ErrorCode::PagesDamaged);
    const std::string_view reason = check->faults[0].value("reason");
    CHECK(reason == std::string{found} + " does not fit the entries");
}
