#include "app/session/followed_series.h"

#include <vector>

#include "app/session/kitchen_session.h"
#include "app/session/ledger_series.h"

namespace nettare {

namespace {

std::vector<SeriesToBind> inLedger(const Kitchen& kitchen, const std::vector<SeriesToBind>& all) {
    std::vector<SeriesToBind> found;
    found.reserve(all.size());
    for (const SeriesToBind& series : all)
        if (auto known = seriesToBind(kitchen, series.key, series.tags);
            known && !known->readings.empty())
            found.push_back(std::move(*known));
    return found;
}

/// Answers the first thing that went wrong.
std::optional<Error> bringUp(DraftSession& draft, const std::vector<SeriesToBind>& found) {
    std::optional<Error> wrong;
    for (const SeriesToBind& series : found) {
        const auto edit = followSeries(draft.document(), series);
        if (!edit && !wrong) wrong = edit.error();
        if (!edit || !*edit) continue;
        draft.endTyping();
        if (const auto done = draft.apply(**edit); !done && !wrong) wrong = done.error();
        draft.endTyping();
    }
    return wrong;
}

}  // namespace

FollowedSeries::FollowedSeries(KitchenSession& kitchen, QObject* parent)
    : QObject{parent}, kitchen_{kitchen} {
    connect(&kitchen, &KitchenSession::draftOpened, this, &FollowedSeries::follow);
    connect(&kitchen, &KitchenSession::ledgerGrew, this, &FollowedSeries::follow);
}

void FollowedSeries::follow() {
    const DraftSession* draft = kitchen_.draft();
    if (draft == nullptr || draft->readOnly()) return;
    auto all = nettare::followedSeries(draft->document());
    if (all.empty()) return;
    kitchen_.askKitchen(
        this, [this, recipe = draft->recipe(), all = std::move(all)](const Kitchen& kitchen) {
            return [this, recipe, found = inLedger(kitchen, all)] {
                DraftSession* now = kitchen_.draft();
                if (now == nullptr || now->recipe() != recipe) return;
                if (const auto wrong = bringUp(*now, found)) emit kitchen_.failed(*wrong);
            };
        });
}

}  // namespace nettare
