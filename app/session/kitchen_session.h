#pragma once

#include <QObject>
#include <QString>
#include <QTimer>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "app/session/draft_session.h"
#include "app/session/food_series.h"
#include "app/session/now.h"
#include "app/session/own_foods.h"
#include "app/session/pool_choice.h"
#include "app/work/store_thread.h"
#include "core/ledger/ledger_entry.h"
#include "db/food_tables.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// A revision with its closure and its figures, for Compare and the revision list.
struct OpenedRevision {
    KeptRevision kept;
    Closure closure;
    std::shared_ptr<const Evaluation> evaluation;  ///< recomputed with the pinned foods
};

/// The open kitchen of a window: the shelf, the draft that is worked on, and everything that goes
/// to the disk. Work on the file runs in a thread of its own, in order; answers come by signals or
/// callbacks in the GUI thread. Errors come by failed().
class KitchenSession : public QObject {
    Q_OBJECT

public:
    /// Takes the kitchen over. `sample` says that it is the demo, kept nowhere yet.
    KitchenSession(Kitchen kitchen, TablePlaces places, bool sample, QObject* parent = nullptr);
    ~KitchenSession() override;

    [[nodiscard]] bool isSample() const { return sample_; }
    [[nodiscard]] bool writable() const { return writable_; }
    [[nodiscard]] const QString& path() const { return path_; }
    [[nodiscard]] const QString& heldBy() const { return heldBy_; }
    [[nodiscard]] const std::vector<ShelvedRecipe>& shelf() const { return shelf_; }
    /// All recipes, whatever the shelf is searched for.
    [[nodiscard]] const std::vector<ShelvedRecipe>& recipes() const { return recipes_; }
    [[nodiscard]] DraftSession* draft() const { return draft_.get(); }
    [[nodiscard]] const std::vector<RevisionSummary>& revisions() const { return revisions_; }
    [[nodiscard]] SaveState saveState() const { return saveState_; }
    /// Seconds since the journal last reached the disk; nothing before the first time.
    [[nodiscard]] std::optional<int> savedSecondsAgo() const;

    /// Opens nothing while changes of the open draft cannot be written.
    void openRecipe(const QString& id);
    void findRecipes(const QString& words);  ///< the shelf shows those; all for no words
    void newRecipe(const QString& title);
    /// Keeps the draft as the next revision. The draft must have figures.
    void keep(const QString& note);
    /// Puts the revision's text in place of the draft's, undoably, and keeps it as the next.
    void bringBack(int revision);
    void openRevision(int number, std::function<void(OpenedRevision)> done);
    /// Applies an edit of the draft that uses kept recipes which it may not hold yet, once they are
    /// read with all that they use. `done` follows, unless another recipe was opened meanwhile.
    void applyWithRecipes(const Edit& edit, std::function<void(const Result<void>&)> done);
    /// Writes the indications to the ledger, then gives the edit that binds them to the draft.
    /// `food` is a row that the edit brings into the draft.
    void record(const std::vector<LedgerEntry>& entries, const Edit& edit,
                const std::optional<TableFood>& food = {});
    /// The same, with or without an edit, all or nothing of the ledger's. `done` follows with the
    /// last entry in place of recorded() and failed(), unless `receiver` is gone by then; an edit
    /// that does not fit any more is told by failed(), and the reading stays.
    void record(const std::vector<LedgerEntry>& entries, const std::optional<Edit>& edit,
                const std::optional<TableFood>& food, QObject* receiver,
                std::function<void(const Result<ChainedEntry>&)> done);
    /// Runs `work` on the kitchen in the store's thread, after all that was told it so far, and
    /// what it answers here, unless `receiver` is gone by then.
    void askKitchen(QObject* receiver, std::function<std::function<void()>(Kitchen& kitchen)> work);
    /// What a millilitre of a group of foods weighs, to be stated for a line; nothing where the
    /// table does not say.
    [[nodiscard]] std::optional<GroupDensity> groupDensity(const std::string& group) const;
    /// The kitchen's own foods, and what its recipes use.
    [[nodiscard]] OwnFoods& ownFoods() { return own_; }
    [[nodiscard]] const OwnFoods& ownFoods() const { return own_; }
    /// What yield series are pooled with, as chosen since the window was opened.
    [[nodiscard]] PoolChoices& pools() { return pools_; }
    /// Foods whose names match, own ones first where they match as well, else from the tables;
    /// immediate (a few milliseconds).
    [[nodiscard]] FoodSearch searchFoods(const QString& words, std::size_t most) const;
    [[nodiscard]] std::vector<FoodHit> findFoods(const QString& words, std::size_t most) const;
    /// The tables at hand; nothing where the program's own cannot be opened.
    [[nodiscard]] const FoodTables* tables() const { return tables_ ? &*tables_ : nullptr; }
    [[nodiscard]] const TablePlaces& tablePlaces() const { return places_; }
    /// Opens the table files anew, after an import.
    void reloadTables();
    /// As the open draft has it, else an own food as it counts now, else as the tables have it.
    [[nodiscard]] std::optional<TableFood> food(const TableRow& row) const;
    /// The series by which the drafts of these recipes weigh a food; drafts that do not resolve
    /// are passed over. Told unless `receiver` is gone by then.
    void askSeries(const TableRow& row, std::vector<std::string> recipes, QObject* receiver,
                   std::function<void(std::vector<FoodSeries>)> done);
    /// The groups of the tables at hand, told likewise.
    void askGroups(QObject* receiver, std::function<void(std::vector<FoodGroup>)> done);
    /// Gives the drafts of these recipes that version of an own food in place of all versions of
    /// the foods `numbers`: an edit of each draft, which its undo takes back.
    void moveDrafts(const std::vector<std::string>& recipes,
                    const std::vector<std::string>& numbers, const TableFood& to);
    /// Writes the whole kitchen to a new file and goes on in it.
    void keepKitchenAs(const QString& path);
    /// Writes a whole copy of the kitchen to a new file; the session stays where it is.
    void backUp(const QString& path);
    /// Everything told to the disk so far is there when this returns: before closing, in tests.
    void settle();

signals:
    void shelfChanged();
    void draftOpened();  ///< draft() is another one
    void revisionsChanged();
    void saveStateChanged();
    void kitchenMoved();  ///< path(), isSample() changed
    void ledgerGrew();    ///< by any record()
    void recorded();      ///< the newest record() is in the ledger
    void tablesChanged();
    void failed(const nettare::Error& error);

private:
    struct LoadedDraft;
    /// Runs in the store's thread.
    static Result<LoadedDraft> load(const Kitchen& kitchen, const std::string& recipe,
                                    const FoodTables* tables);
    template <class Work, class Done>
    void ask(Work work, Done done);
    void showDraft(LoadedDraft loaded);
    void tellJournal();
    /// Gives the edit of a recorded reading to its draft, which may be closed by now; `done`
    /// follows where that worked.
    void bind(const QString& recipe, const Edit& edit, const std::optional<TableFood>& food,
              std::function<void()> done);
    void bindElsewhere(const QString& recipe, const Edit& edit,
                       const std::optional<TableFood>& food, std::function<void()> done);
    void journalAnswered(const Result<void>& written);
    void setSaveState(SaveState state);
    void loadShelf();
    void loadRevisions();
    void keepAs(const QString& note, std::optional<int> parent);

    StoreThread store_;
    std::shared_ptr<Kitchen> kitchen_;  ///< used in the store's thread only
    TablePlaces places_;
    std::shared_ptr<const FoodTables> storeTables_;  ///< used in the store's thread only
    std::optional<FoodTables> tables_;               ///< used in the GUI thread only
    bool sample_ = false, writable_ = true;
    QString path_, heldBy_, words_;
    std::vector<ShelvedRecipe> shelf_, recipes_;
    std::unique_ptr<DraftSession> draft_;
    std::vector<RevisionSummary> revisions_;
    SaveState saveState_ = SaveState::Saved;
    OwnFoods own_;
    PoolChoices pools_;
    SinceThen lastSaved_;
    QTimer journalTimer_;
    int openings_ = 0;  ///< counts, so that only the newest opening shows
    int told_ = 0;      ///< changes that the journal was told
};

}  // namespace nettare
