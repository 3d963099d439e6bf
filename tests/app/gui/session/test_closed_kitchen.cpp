#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"

#include <QPointer>
#include <QSignalSpy>
#include <QTest>

namespace nettare {

TEST_CASE("a kitchen that was closed does nothing late, whatever its draft's undo history holds") {
    constexpr int kLongerThanTheJournalWaits_ms = 600;
    auto kitchen = sampleSession();
    REQUIRE(kitchen->draft()->undoStack().count() > 0);
    const QPointer<DraftSession> draft{kitchen->draft()};
    QSignalSpy told{kitchen->draft(), &DraftSession::journalGrew};
    kitchen.reset();
    QTest::qWait(kLongerThanTheJournalWaits_ms);
    CHECK(draft.isNull());
    CHECK(told.isEmpty());
}

}  // namespace nettare
