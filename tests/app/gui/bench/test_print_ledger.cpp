#include "app/bench/ledger_sheet.h"
#include "app/bench/print_ledger.h"
#include "app/files/read_file.h"
#include "app/gui/bench/long_ledger.h"
#include "app/gui/support/gui.h"
#include "db/kitchen/kitchen.h"
#include "support/run_tool.h"

#include <QDir>
#include <QFile>
#include <QPrinter>
#include <QTemporaryDir>

#include <algorithm>

namespace nettare {

namespace {

Progress quiet() {
    return Progress{[] {}};
}

/// A printer into a PDF of that name.
struct PdfPrinter {
    explicit PdfPrinter(const QString& path) : printer{QPrinter::HighResolution} {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(path);
        printer.setPageSize(QPageSize{QPageSize::A4});
    }
    LedgerWritten print(const LedgerSource& ledger, const Progress& progress = quiet()) {
        return printLedger(ledger, QStringLiteral("spring"), QStringLiteral("23 May 2026, 17:51"),
                           printer, progress);
    }
    QPrinter printer;
};

std::string textOfPdf(const QString& path) {
    return printedByTool("poppler-utils", "pdftotext -layout '" + path.toStdString() + "' -");
}

std::size_t countOf(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++count;
    return count;
}

/// Cancels when that many entries were handed on.
LedgerSource cancellingAt(const LedgerSource& ledger, long long sequence, Progress progress) {
    return [=](const std::function<bool(const ChainedEntry&)>& each) {
        return ledger([&](const ChainedEntry& chained) {
            if (chained.sequence == sequence) progress.cancel();
            return each(chained);
        });
    };
}

QStringList filesIn(const QTemporaryDir& folder) {
    return QDir{folder.path()}.entryList(QDir::Files);
}

}  // namespace

TEST_CASE("the printed ledger holds every entry, and its head and number on each page") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("ledger.pdf"));
    const auto entries = longLedger(130);
    const LedgerWritten written = PdfPrinter{path}.print(ledgerOf(entries));
    REQUIRE(written.whole);
    CHECK(written.whole->entries == 130);
    CHECK(written.whole->head == entries->back().hash);
    REQUIRE(written.whole->pages > 2);
    CHECK(filesIn(folder) == QStringList{QStringLiteral("ledger.pdf")});
    const std::string text = textOfPdf(path);
    for (int i = 1; i < 130; ++i) {
        INFO(i);
        CHECK(text.find("prawn " + std::to_string(i)) != std::string::npos);
    }
    const auto pages = static_cast<std::size_t>(written.whole->pages);
    CHECK(countOf(text, entries->back().hash) == pages);
    CHECK(countOf(text, "of 130") == pages);
    CHECK(countOf(text, "page ") == pages);
    CHECK_THAT(text, Catch::Contains("Ledger of spring") && Catch::Contains("Entries: 130") &&
                         Catch::Contains("taken back: slip of the hand") &&
                         Catch::Contains("23 May 2026, 17:51") && Catch::Contains("entries 1 to "));
    const auto at = text.find("Checked while printing: the chain is intact");
    REQUIRE(at != std::string::npos);
    CHECK(text.find("up to entry 130 (" + entries->back().hash.substr(0, 8) + ")", at) !=
          std::string::npos);
    const QString kept = qEnvironmentVariable("NETTARE_PICTURES");
    if (!kept.isEmpty()) QFile::copy(path, kept + QStringLiteral("/ledger.pdf"));
}

TEST_CASE("the printed ledger says where its chain is broken") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("ledger.pdf"));
    auto entries = std::make_shared<std::vector<ChainedEntry>>(*longLedger(12));
    (*entries)[6].entry.shown = Decimal{9999, -1};
    const LedgerWritten written = PdfPrinter{path}.print(ledgerOf(entries));
    REQUIRE(written.whole);
    CHECK(written.whole->checked);
    CHECK(written.whole->broken == 7);
    CHECK_THAT(textOfPdf(path), Catch::Contains("the chain is BROKEN at entry 7"));
}

TEST_CASE("a ledger without entries prints one page that says so") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("ledger.pdf"));
    const auto none = std::make_shared<const std::vector<ChainedEntry>>();
    const LedgerWritten written = PdfPrinter{path}.print(ledgerOf(none));
    REQUIRE(written.whole);
    CHECK(written.whole->pages == 1);
    CHECK_THAT(textOfPdf(path), Catch::Contains("no entries"));
}

TEST_CASE("a printing that was cancelled leaves no file, and an earlier one whole") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("ledger.pdf"));
    const auto entries = longLedger(130);
    const Progress progress = quiet();
    const auto ledger = cancellingAt(ledgerOf(entries), 100, progress);
    CHECK_FALSE(PdfPrinter{path}.print(ledger, progress).whole);
    CHECK(filesIn(folder).isEmpty());
    REQUIRE(PdfPrinter{path}.print(ledgerOf(entries)).whole);
    const auto before = readFile(path.toStdString());
    REQUIRE(before);
    const Progress again = quiet();
    CHECK(PdfPrinter{path}
              .print(cancellingAt(ledgerOf(entries), 60, again), again)
              .refusal.isEmpty());
    const auto after = readFile(path.toStdString());
    REQUIRE(after);
    CHECK(*after == *before);
}

TEST_CASE("what is recorded while the ledger prints is not on the paper") {
    const auto entries = longLedger(10);
    int run = 0;
    // The second time, the ledger has grown.
    const LedgerSource growing = [&](const std::function<bool(const ChainedEntry&)>& each) {
        const std::size_t most = ++run == 1 ? 7 : entries->size();
        for (std::size_t i = 0; i < most; ++i)
            if (!each((*entries)[i])) break;
        return Result<void>{};
    };
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("ledger.pdf"));
    const LedgerWritten written = PdfPrinter{path}.print(growing);
    REQUIRE(written.whole);
    CHECK(written.whole->head == (*entries)[6].hash);
    CHECK_THAT(textOfPdf(path), !Catch::Contains("prawn 8"));
}

TEST_CASE("a ledger is saved as CSV whole, or not at all") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("ledger.csv"));
    const auto entries = longLedger(40);
    const Progress progress = quiet();
    CHECK_FALSE(
        writeLedgerCsv(cancellingAt(ledgerOf(entries), 30, progress), path, progress).whole);
    CHECK(filesIn(folder).isEmpty());
    REQUIRE(writeLedgerCsv(ledgerOf(entries), path, quiet()).whole);
    const auto text = readFile(path.toStdString());
    REQUIRE(text);
    CHECK(std::ranges::count(*text, '\n') == 41);
    CHECK_THAT(*text, Catch::Contains(entries->back().hash));
    const auto gone = writeLedgerCsv(ledgerOf(entries),
                                     folder.filePath(QStringLiteral("gone/ledger.csv")), quiet());
    CHECK_FALSE(gone.whole);
    CHECK_THAT(gone.refusal.toStdString(), Catch::Contains("ledger.csv"));
}

TEST_CASE("a ledger that no file takes is not printed, and says so") {
    const QTemporaryDir folder;
    const auto written = PdfPrinter{folder.filePath(QStringLiteral("gone/ledger.pdf"))}.print(
        ledgerOf(longLedger(3)));
    CHECK(written.refusal == QStringLiteral("The ledger could not be printed: the printer or the "
                                            "file takes nothing. Choose another one."));
}

TEST_CASE("neither paper nor CSV takes the place of a kitchen") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("spring.nettare"));
    { REQUIRE(Kitchen::create(path.toStdString(), "2026-05-23T12:00:00+02:00")); }
    const auto before = readFile(path.toStdString());
    REQUIRE(before);
    const auto entries = longLedger(5);
    for (const LedgerWritten& written : {PdfPrinter{path}.print(ledgerOf(entries)),
                                         writeLedgerCsv(ledgerOf(entries), path, quiet())}) {
        CHECK_FALSE(written.whole);
        CHECK_THAT(written.refusal.toStdString(),
                   Catch::Contains("it is a kitchen or another database"));
    }
    const auto after = readFile(path.toStdString());
    REQUIRE(after);
    CHECK(*after == *before);
}

TEST_CASE("an entry on paper says what became of it and why") {
    const auto entries = longLedger(4);
    LedgerWalk walk;
    for (const ChainedEntry& each : *entries) walk.survey(each);
    std::vector<LedgerLine> lines;
    for (const ChainedEntry& each : *entries) lines.push_back(ledgerLineOf(each, walk.look(each)));
    CHECK(lines[0].what == QStringLiteral("prawn 1"));
    CHECK(lines[0].gross == QStringLiteral("271.1"));
    CHECK(lines[0].tare == QStringLiteral("212.2"));
    CHECK(lines[0].net == QStringLiteral("58.9"));
    CHECK_FALSE(lines[0].struck);
    CHECK(lines[2].struck);
    CHECK(lines[2].note ==
          QStringLiteral("taken back: slip of the hand · in “steel bowl” · “counter”, d 0.1 g"));
    CHECK(lines[3].what == QStringLiteral("takes back 00000003"));
    CHECK(lines[3].note == QStringLiteral("slip of the hand"));
    CHECK(lines[3].gross.isEmpty());
}

TEST_CASE("an entry on paper says that its tare, or what went in, was taken back") {
    const ChainedEntry chained = longLedger(3)->front();
    Said tare, before;
    tare.supersededBy = before.supersededBy = "00000009-0000-4000-8000-000000000000";
    tare.whySuperseded = "lid on";
    before.whySuperseded = "two bulbs more";
    WalkedEntry walked;
    walked.ofTare = &tare;
    walked.ofBefore = &before;
    CHECK_THAT(ledgerLineOf(chained, walked).note.toStdString(),
               Catch::StartsWith("what went in was taken back: two bulbs more · its tare was taken "
                                 "back: lid on · in “steel bowl”"));
    walked.jarBefore = Decimal{4126, -1};
    CHECK_THAT(ledgerLineOf(chained, walked).note.toStdString(),
               Catch::Contains("what the jar showed before was taken back: lid on"));
}

}  // namespace nettare
