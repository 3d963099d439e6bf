#include "app/window/saved_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace nettare {

namespace {

struct SavedText {
    Q_DECLARE_TR_FUNCTIONS(SavedText)
};

QString draftText(const DraftSession& draft) {
    const auto base = draft.baseRevision();
    return base ? SavedText::tr("draft on revision %1").arg(*base)
                : SavedText::tr("draft, no revision yet");
}

QString agoText(std::optional<int> seconds) {
    if (!seconds) return SavedText::tr("saved");
    if (*seconds < 1) return SavedText::tr("saved just now");
    if (*seconds < 60) return SavedText::tr("saved %1 s ago").arg(*seconds);
    if (*seconds < 3600) return SavedText::tr("saved %1 min ago").arg(*seconds / 60);
    return SavedText::tr("saved %1 h ago").arg(*seconds / 3600);
}

QString stateText(const KitchenSession& kitchen) {
    switch (kitchen.saveState()) {
        case SaveState::Saved:
            return kitchen.isSample() ? SavedText::tr("sample, not saved")
                                      : agoText(kitchen.savedSecondsAgo());
        case SaveState::Pending:
            return kitchen.isSample() ? SavedText::tr("sample, not saved")
                                      : SavedText::tr("saving…");
        case SaveState::ReadOnly:
            return SavedText::tr("read-only");
        case SaveState::Failed:
            return SavedText::tr("not saved");
    }
    return {};
}

}  // namespace

QString savedText(const KitchenSession& kitchen) {
    const DraftSession* draft = kitchen.draft();
    if (draft == nullptr) return {};
    return SavedText::tr("%1 · %2").arg(draftText(*draft), stateText(kitchen));
}

int nextRevision(const KitchenSession& kitchen) {
    int newest = 0;
    for (const RevisionSummary& revision : kitchen.revisions())
        newest = std::max(newest, revision.number);
    return newest + 1;
}

}  // namespace nettare
