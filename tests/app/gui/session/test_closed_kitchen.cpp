#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"

#include <QTest>

namespace nettare {

TEST_CASE("a kitchen that was closed does nothing late, whatever its draft's undo history holds") {
    constexpr int kLongerThanTheJournalWaits_ms = 600;
    auto kitchen = sampleSession();
    REQUIRE(kitchen->draft()->undoStack().count() > 0);
    kitchen.reset();
    QTest::qWait(kLongerThanTheJournalWaits_ms);
    SUCCEED("no timer of the closed kitchen ran");
}

}  // namespace nettare
