#include "app/session/kitchen_session.h"

#include "app/kitchen/keep_draft.h"
#include "app/session/new_recipe.h"
#include "app/session/now.h"

namespace nettare {

namespace {

/// The journal is told this long after the first change that it does not know yet.
constexpr int kJournalDelay_ms = 400;

/// A document as it stands after the edits that count.
Json currentOf(const StoredDraft& draft) {
    Json document = draft.base;
    for (std::size_t i = 0; i < draft.cursor && i < draft.edits.size(); ++i)
        if (auto after = applied(document, draft.edits[i]))
            document = std::move(*after);
        else
            break;
    return document;
}

/// What work gave goes to `done`, which takes nothing where work gives nothing. No part of the
/// generic lambda that calls it: there clang 14 asks both calls of `done` to compile.
template <class Answer, class Done>
void handOn(Answer& answer, const Done& done) {
    if constexpr (std::is_void_v<typename Answer::value_type>)
        done();
    else
        done(std::move(*answer));
}

/// Whether its text is no recipe document at all, as no field leaves it.
bool isUnreadable(const DraftSession& draft) {
    if (!draft.failure() || !draft.failure()->pointer.empty()) return false;
    using enum ErrorCode;
    const ErrorCode code = draft.failure()->code;
    return code == WrongKind || code == MissingKey || code == UnknownKey || code == WrongFormat;
}

}  // namespace

struct KitchenSession::LoadedDraft {
    std::string recipe;
    StoredDraft draft;
    Closure closure;
    std::vector<RevisionSummary> revisions;
};

KitchenSession::KitchenSession(Kitchen kitchen, TablePlaces places, bool sample, QObject* parent)
    : QObject{parent},
      kitchen_{std::make_shared<Kitchen>(std::move(kitchen))},
      places_{std::move(places)},
      sample_{sample},
      writable_{kitchen_->writable()},
      path_{QString::fromStdString(kitchen_->path())},
      heldBy_{QString::fromStdString(kitchen_->heldBy())},
      own_{store_, kitchen_} {
    if (!writable_) saveState_ = SaveState::ReadOnly;
    journalTimer_.setSingleShot(true);
    journalTimer_.setInterval(kJournalDelay_ms);
    connect(&journalTimer_, &QTimer::timeout, this, &KitchenSession::tellJournal);
    connect(&own_, &OwnFoods::failed, this, &KitchenSession::failed);
    loadShelf();
    own_.load();
    reloadTables();
}

KitchenSession::~KitchenSession() {
    // Whoever listens may be half gone already.
    blockSignals(true);
    settle();
}

/// Runs `work` on the kitchen in the store's thread; its answer goes to `done`, its error to
/// failed().
template <class Work, class Done>
void KitchenSession::ask(Work work, Done done) {
    store_.post(
        this, [kitchen = kitchen_, work = std::move(work)] { return work(*kitchen); },
        [this, done = std::move(done)](auto answer) {
            if (!answer)
                emit failed(answer.error());
            else
                handOn(answer, done);
        });
}

void KitchenSession::askKitchen(QObject* receiver,
                                std::function<std::function<void()>(Kitchen& kitchen)> work) {
    store_.post(
        receiver, [kitchen = kitchen_, work = std::move(work)] { return work(*kitchen); },
        [](const std::function<void()>& answer) { answer(); });
}

std::optional<int> KitchenSession::savedSecondsAgo() const {
    return lastSaved_.seconds();
}

Result<KitchenSession::LoadedDraft> KitchenSession::load(const Kitchen& kitchen,
                                                         const std::string& recipe,
                                                         const FoodTables* tables) {
    auto draft = kitchen.draft(recipe);
    if (!draft) return fail(draft.error());
    auto revisions = kitchen.revisions(recipe);
    if (!revisions) return fail(revisions.error());
    Closure closure;
    if (tables != nullptr) {
        auto found = closureOfDraft(kitchen, currentOf(*draft), *tables);
        if (!found) return fail(found.error());
        closure = std::move(*found);
    }
    return LoadedDraft{recipe, std::move(*draft), std::move(closure), std::move(*revisions)};
}

void KitchenSession::openRecipe(const QString& id) {
    tellJournal();
    const int opening = ++openings_, told = told_;
    ask([recipe = id.toStdString(), tables = storeTables_](
            const Kitchen& kitchen) { return load(kitchen, recipe, tables.get()); },
        [this, opening, told](LoadedDraft loaded) {
            if (opening != openings_) return;
            // What could not be written stays open: nowhere else is it.
            if (saveState_ == SaveState::Failed) return;
            // What was typed since it was read.
            if (journalTimer_.isActive()) tellJournal();
            const QString opened = QString::fromStdString(loaded.recipe);
            if (told != told_ && draft_ && draft_->recipe() == opened)
                openRecipe(opened);
            else
                showDraft(std::move(loaded));
        });
}

void KitchenSession::showDraft(LoadedDraft loaded) {
    const auto edits = static_cast<int>(loaded.draft.edits.size());
    draft_ = std::make_unique<DraftSession>(QString::fromStdString(loaded.recipe), loaded.draft,
                                            std::move(loaded.closure), !writable_);
    connect(draft_.get(), &DraftSession::journalGrew, this, [this] {
        if (!writable_) return;
        setSaveState(SaveState::Pending);
        if (!journalTimer_.isActive()) journalTimer_.start();
    });
    revisions_ = std::move(loaded.revisions);
    emit draftOpened();
    emit revisionsChanged();
    if (draft_->undoStack().count() < edits || isUnreadable(*draft_))
        emit failed(Error{ErrorCode::DraftDamaged}.with("recipe", loaded.recipe));
}

void KitchenSession::tellJournal() {
    journalTimer_.stop();
    if (!draft_ || !writable_) return;
    const std::string recipe = draft_->recipe().toStdString();
    if (auto foods = draft_->takeNewFoods(); !foods.empty())
        ask([foods = std::move(foods)](Kitchen& kitchen) { return kitchen.copyIn(foods); }, [] {});
    auto change = draft_->takeJournalChange();
    if (!change) return setSaveState(SaveState::Saved);
    change->at = now();
    ++told_;
    store_.post(
        this,
        [kitchen = kitchen_, recipe, change = std::move(*change)] {
            return kitchen->journal(recipe, change);
        },
        [this](const Result<void>& written) { journalAnswered(written); });
}

void KitchenSession::journalAnswered(const Result<void>& written) {
    if (written) {
        lastSaved_.start();
        if (!journalTimer_.isActive()) setSaveState(SaveState::Saved);
        loadShelf();
        return;
    }
    if (draft_) draft_->journalNotWritten();
    setSaveState(SaveState::Failed);
    emit failed(written.error());
}

void KitchenSession::setSaveState(SaveState state) {
    if (saveState_ == state && state != SaveState::Saved) return;
    saveState_ = state;
    emit saveStateChanged();
}

void KitchenSession::loadShelf() {
    ask(
        [words = words_.toStdString()](const Kitchen& kitchen) {
            return words.empty() ? kitchen.recipes() : kitchen.find(words);
        },
        [this, words = words_](std::vector<ShelvedRecipe> shelf) {
            if (words != words_) return;
            shelf_ = std::move(shelf);
            if (words.isEmpty()) recipes_ = shelf_;
            emit shelfChanged();
        });
}

void KitchenSession::findRecipes(const QString& words) {
    words_ = words.trimmed();
    loadShelf();
}

void KitchenSession::newRecipe(const QString& title) {
    ask([document = newRecipeDocument(title.toStdString()),
         at = now()](Kitchen& kitchen) { return kitchen.addRecipe(document, at); },
        [this](const std::string& id) {
            loadShelf();
            openRecipe(QString::fromStdString(id));
        });
}

void KitchenSession::loadRevisions() {
    if (!draft_) return;
    ask([recipe = draft_->recipe().toStdString()](
            const Kitchen& kitchen) { return kitchen.revisions(recipe); },
        [this](std::vector<RevisionSummary> revisions) {
            revisions_ = std::move(revisions);
            emit revisionsChanged();
        });
}

void KitchenSession::keep(const QString& note) {
    if (draft_) keepAs(note, std::nullopt);
}

// Without a parent it is what the draft began from, as the file has it by then: the keep before may
// still be on its way.
void KitchenSession::keepAs(const QString& note, std::optional<int> parent) {
    draft_->endTyping();
    tellJournal();
    ask(
        [recipe = draft_->recipe().toStdString(), document = draft_->document(),
         closure = draft_->closure(), note = note.trimmed().toStdString(), at = now(),
         parent](Kitchen& kitchen) -> Result<int> {
            auto revision = revisionToKeep(document, closure, note, at, parent);
            if (!revision) return fail(revision.error());
            if (!parent) {
                const auto draft = kitchen.draft(recipe);
                if (!draft) return fail(draft.error());
                revision->parent = draft->baseRevision;
            }
            return kitchen.keep(recipe, *revision);
        },
        [this, recipe = draft_->recipe()](int number) {
            if (draft_ && draft_->recipe() == recipe) draft_->keptAs(number);
            loadShelf();
            own_.load();
            loadRevisions();
        });
}

void KitchenSession::openRevision(int number, std::function<void(OpenedRevision)> done) {
    if (!draft_) return;
    ask(
        [recipe = draft_->recipe().toStdString(),
         number](const Kitchen& kitchen) -> Result<OpenedRevision> {
            auto kept = kitchen.revision(recipe, number);
            if (!kept) return fail(kept.error());
            auto closure = closureOfRevision(kitchen, *kept);
            if (!closure) return fail(closure.error());
            auto evaluation = evaluated(kept->document, *closure, nullptr);
            if (!evaluation) return fail(evaluation.error());
            return OpenedRevision{std::move(*kept), std::move(*closure), std::move(*evaluation)};
        },
        std::move(done));
}

void KitchenSession::bringBack(int revision) {
    openRevision(revision, [this, revision](const OpenedRevision& opened) {
        if (!draft_) return;
        Edit edit;
        edit.kind = EditKind::BringBack;
        edit.subject = tr("revision %1").arg(revision).toStdString();
        edit.changes.push_back(SetMember{"", draft_->document(), opened.kept.document});
        draft_->endTyping();
        if (auto done = draft_->apply(edit, opened.closure); !done)
            emit failed(done.error());
        else
            keepAs(tr("brought back from revision %1").arg(revision), revision);
    });
}

void KitchenSession::applyWithRecipes(const Edit& edit,
                                      std::function<void(const Result<void>&)> done) {
    auto after = applied(draft_->document(), edit);
    if (!after) return done(fail(after.error()));
    store_.post(
        this,
        [kitchen = kitchen_, tables = storeTables_,
         document = std::move(*after)]() -> Result<Closure> {
            if (!tables) return fail(ErrorCode::TableUnreadable);
            return closureOfDraft(*kitchen, document, *tables);
        },
        [this, edit, done = std::move(done), recipe = draft_->recipe()](Result<Closure> closure) {
            if (!closure) return done(fail(closure.error()));
            if (!draft_ || draft_->recipe() != recipe) return;
            done(draft_->apply(edit, *closure));
        });
}

void KitchenSession::keepKitchenAs(const QString& path) {
    tellJournal();
    ask(
        [path = path.toStdString()](Kitchen& kitchen) -> Result<void> {
            if (auto copied = kitchen.backUp(path); !copied) return copied;
            auto there = Kitchen::open(path, KitchenAccess::Write);
            if (!there) return fail(there.error());
            kitchen = std::move(*there);
            return {};
        },
        [this, path] {
            path_ = path;
            sample_ = false;
            writable_ = true;
            heldBy_.clear();
            emit kitchenMoved();
            if (draft_) openRecipe(draft_->recipe());
        });
}

void KitchenSession::backUp(const QString& path) {
    tellJournal();
    ask([path = path.toStdString()](const Kitchen& kitchen) { return kitchen.backUp(path); },
        [] {});
}

void KitchenSession::settle() {
    tellJournal();
    store_.drain();
}

}  // namespace nettare
