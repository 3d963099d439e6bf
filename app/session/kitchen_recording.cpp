#include <QPointer>

#include "app/session/kitchen_session.h"
#include "app/session/now.h"

namespace nettare {

namespace {

/// The last of them as it stands in the ledger; an empty one where there are none.
Result<ChainedEntry> recordedAll(Kitchen& kitchen, const std::vector<LedgerEntry>& entries) {
    ChainedEntry last;
    const auto done = kitchen.together([&]() -> Result<void> {
        for (const LedgerEntry& entry : entries) {
            auto recorded = kitchen.record(entry);
            if (!recorded) return fail(recorded.error());
            last = std::move(*recorded);
        }
        return {};
    });
    if (!done) return fail(done.error());
    return last;
}

}  // namespace

void KitchenSession::record(const std::vector<LedgerEntry>& entries, const Edit& edit,
                            const std::optional<TableFood>& food) {
    if (!draft_) return;
    record(entries, std::nullopt, {}, this,
           [this, edit, food, recipe = draft_->recipe()](const Result<ChainedEntry>& last) {
               if (!last)
                   emit failed(last.error());
               else
                   bind(recipe, edit, food, [this] { emit recorded(); });
           });
}

void KitchenSession::record(const std::vector<LedgerEntry>& entries,
                            const std::optional<Edit>& edit, const std::optional<TableFood>& food,
                            QObject* receiver,
                            std::function<void(const Result<ChainedEntry>&)> done) {
    // Who asked may be gone by then; the edit is bound all the same.
    store_.post(
        this, [kitchen = kitchen_, entries] { return recordedAll(*kitchen, entries); },
        [this, edit, food, done = std::move(done), asker = QPointer<QObject>{receiver},
         recipe = draft_ ? draft_->recipe() : QString{}](const Result<ChainedEntry>& last) {
            if (last && edit && !recipe.isEmpty()) bind(recipe, *edit, food, [] {});
            if (asker) done(last);
            if (last) emit ledgerGrew();
        });
}

void KitchenSession::bind(const QString& recipe, const Edit& edit,
                          const std::optional<TableFood>& food, std::function<void()> done) {
    if (!draft_ || draft_->recipe() != recipe)
        return bindElsewhere(recipe, edit, food, std::move(done));
    draft_->endTyping();
    if (auto bound = food ? draft_->apply(edit, *food) : draft_->apply(edit); !bound)
        emit failed(bound.error());
    else
        done();
}

// Another recipe was opened before the reading was in the ledger: it belongs to its own all the
// same.
void KitchenSession::bindElsewhere(const QString& recipe, const Edit& edit,
                                   const std::optional<TableFood>& food,
                                   std::function<void()> done) {
    store_.post(
        this,
        [kitchen = kitchen_, recipe = recipe.toStdString(), edit, food,
         at = now()]() -> Result<void> {
            if (food)
                if (auto copied = kitchen->copyIn({*food}); !copied) return fail(copied.error());
            const auto draft = kitchen->draft(recipe);
            if (!draft) return fail(draft.error());
            return kitchen->journal(recipe, {draft->cursor, {edit}, draft->cursor + 1, at});
        },
        [this, done = std::move(done)](const Result<void>& bound) {
            if (!bound) {
                emit failed(bound.error());
                return;
            }
            loadShelf();
            done();
        });
}

}  // namespace nettare
