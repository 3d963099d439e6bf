#include "app/bench/ledger_output.h"
#include "app/gui/bench/bench_kitchen.h"
#include "app/gui/bench/ledger_paths.h"
#include "app/gui/support/gui.h"
#include "app/widgets/message_line.h"

#include <QDir>
#include <QPushButton>

namespace nettare {

namespace {

struct ShownOutput {
    ShownOutput() : paths{folder}, output{kitchen.kitchen(), paths} {
        showReady(output, {900, 140});
    }
    QStringList files() const { return QDir{folder.path()}.entryList(QDir::Files); }
    MessageLine& report() { return child<MessageLine>(output, "outputReport"); }

    QTemporaryDir folder;
    LedgerPaths paths;
    BenchKitchen kitchen;
    LedgerOutput output;
};

}  // namespace

TEST_CASE("the ledger is printed beside the bench, which goes on") {
    ShownOutput shown;
    shown.kitchen.weighPrawns({"9.6", "9.8"});
    std::optional<ChainState> chain;
    QObject::connect(&shown.output, &LedgerOutput::chainChecked, &shown.output,
                     [&chain](const ChainState& state) { chain = state; });
    shown.output.print();
    CHECK(shown.output.busy());
    CHECK(child<QPushButton>(shown.output, "cancelOutput").isVisible());
    REQUIRE(waitUntil([&] { return !shown.output.busy(); }));
    CHECK(shown.report().kind() == MessageKind::Done);
    CHECK_THAT(shown.report().text().toStdString(),
               Catch::StartsWith("The ledger is printed; entries: 3, pages: 1. Its head is " +
                                 shown.kitchen.desk().end().hash));
    CHECK(shown.files() == QStringList{QStringLiteral("ledger.pdf")});
    REQUIRE(chain);
    CHECK(chain->isIntact());
    CHECK(chain->head == shown.kitchen.desk().end().hash);
}

TEST_CASE("the ledger is saved as CSV with the name of its kitchen") {
    ShownOutput shown;
    shown.output.saveCsv();
    REQUIRE(waitUntil([&] { return !shown.output.busy(); }));
    CHECK(shown.report().kind() == MessageKind::Done);
    CHECK(shown.files() == QStringList{QStringLiteral("the sample ledger.csv")});
}

TEST_CASE("output of the ledger that is cancelled leaves nothing behind") {
    ShownOutput shown;
    shown.output.print();
    child<QPushButton>(shown.output, "cancelOutput").click();
    CHECK_FALSE(shown.output.busy());
    CHECK(shown.report().text() == QStringLiteral("Cancelled; nothing was written."));
    shown.kitchen.rest();
    CHECK(shown.files().isEmpty());
}

}  // namespace nettare
