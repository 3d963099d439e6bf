#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/edit/edit.h"
#include "core/food/table_food.h"
#include "core/ledger/ledger_reading.h"
#include "core/support/json.h"
#include "core/support/result.h"
#include "db/food_search.h"
#include "db/kitchen/own_food_record.h"

namespace nettare {

struct KitchenStore;

/// How a kitchen is opened. Write takes the kitchen for this window; where another holds it, the
/// kitchen opens read-only and says who does. Read never writes.
enum class KitchenAccess { Write, Read };

/// One recipe of the shelf.
struct ShelvedRecipe {
    std::string id;
    std::string title;      ///< of the draft
    int revisions = 0;      ///< kept so far; 0 where none
    bool inWork = false;    ///< the draft differs from the newest revision
    std::string changedAt;  ///< ISO 8601, of the draft's last edit or the last keep
};

/// A draft: the document it began with, the edits since, and how many of them count (undone ones
/// stay behind the cursor).
struct StoredDraft {
    Json base;
    std::optional<int> baseRevision;  ///< number of the revision it began from or was kept as last
    std::vector<Edit> edits;
    std::size_t cursor = 0;  ///< edits[0, cursor) are applied
    std::string changedAt;
};

/// A write to the journal of a draft: from `keptEdits` on, the edits are these.
struct JournalChange {
    std::size_t keptEdits = 0;  ///< so many edits of the journal stay
    std::vector<Edit> edits;    ///< those that follow them now
    std::size_t cursor = 0;
    std::string at;  ///< ISO 8601 with offset
};

/// A food that a revision was computed with.
struct PinnedFood {
    TableFood food;
    std::string version;  ///< SHA-256 of its canonical form
};

/// What is kept as a revision.
struct RevisionToKeep {
    Json document;
    std::string note;
    std::string at;                ///< ISO 8601 with offset
    std::optional<int> parent;     ///< number of the revision it was made from
    std::vector<TableFood> foods;  ///< every table row that it and its kept recipes use
    Json figures;                  ///< figuresRecord() of all bases
    int arithmetic = 0;            ///< kArithmeticVersion
};

/// A revision in a list.
struct RevisionSummary {
    int number = 0;
    std::optional<int> parent;
    std::string note, at;
    std::string hash;  ///< SHA-256 of the canonical document
    std::string title;
};

/// A kept revision, as it was.
struct KeptRevision {
    RevisionSummary summary;
    Json document;
    std::vector<PinnedFood> foods;
    Json figures;
    int arithmetic = 0;
    std::string ledgerHead;  ///< hash of the newest ledger entry when it was kept; empty: none yet
};

/// What computing a revision anew needs. Its figures stay text: most often today's are the same
/// bytes, and reading them would take longer than computing them.
struct StoredRevision {
    Json document;
    std::vector<PinnedFood> foods;
    std::string figures;  ///< canonical JSON of RevisionToKeep::figures
    int arithmetic = 0;
};

/// What `verify` looked at.
struct KitchenCheck {
    std::size_t recipes = 0, revisions = 0, ledgerEntries = 0, foodVersions = 0;
    std::size_t ownVersions = 0;  ///< of own foods
    std::size_t photos = 0;
    std::string ledgerHead;
    std::vector<Error> faults;  ///< empty where all is well
};

/// Where the ledger ends.
struct LedgerEnd {
    long long sequence = 0;  ///< 0 where there is no entry yet
    std::string hash;
};

/// A yield series as a list shows it.
struct SeriesSummary {
    SeriesKey key;
    int readings = 0;               ///< entries, whether they count or not
    std::string lastAt;             ///< of the newest
    std::vector<std::string> tags;  ///< all that occur, sorted
};

/// A photograph of a package is at most so large, in MiB.
inline constexpr std::size_t kMostPhotoMib = 20;

/// A kitchen: what a cook made, in one file (*.nettare). Every change is one transaction and is on
/// the disk when the call returns. Revisions, food versions and the ledger are only ever added to.
/// One thread at a time may use an object of this class.
///
/// A change that fails leaves everything as it was. Any of them may fail with KitchenHeld
/// ("holder") or KitchenOpenToRead or KitchenNotWritable where writable() is false, and with
/// KitchenDiskFull, KitchenDiskFault, KitchenBusy; whatever reads, with KitchenDamaged ("reason");
/// whatever names a recipe, with RecipeNotFound.
class Kitchen {
public:
    /// Makes a new, empty kitchen, which must not exist, and opens it to write.
    /// Fails: KitchenExists, KitchenNotWritable, KitchenDiskFull.
    [[nodiscard]] static Result<Kitchen> create(const std::string& path, const std::string& at);

    /// Opens a kitchen, after a safety copy ("x.nettare.before-3") and its migrations where it is
    /// of an older format. Fails: KitchenMissing, KitchenIsFolder, KitchenEmpty, NotAKitchen (a
    /// foreign file), KitchenUnreadable, KitchenNewer ("found", "known"), KitchenOlder (where it
    /// is only read), KitchenUnfinished (a read-only folder, and changes beside the file that
    /// would be hidden), KitchenDamaged, KitchenDiskFull, KitchenBusy, MigrationFailed (content
    /// and format are as before).
    [[nodiscard]] static Result<Kitchen> open(const std::string& path, KitchenAccess access);

    /// A kitchen that lives in memory: the sample before it is kept.
    [[nodiscard]] static Result<Kitchen> inMemory(const std::string& at);

    /// A kitchen in memory with the content of a file, which is only read. Fails as open() does;
    /// an older format is refused.
    [[nodiscard]] static Result<Kitchen> openCopy(const std::string& path);

    Kitchen(Kitchen&&) noexcept;
    Kitchen& operator=(Kitchen&&) noexcept;
    ~Kitchen();

    [[nodiscard]] const std::string& path() const;  ///< empty for one in memory
    [[nodiscard]] bool writable() const;
    /// Where it is not writable though asked for: "anna on counter-pc, process 1234"; empty where
    /// the folder or file does not allow writing.
    [[nodiscard]] const std::string& heldBy() const;

    /// Runs `changes`, whose calls of this kitchen become one transaction: all of it lasts, or
    /// nothing where it fails.
    [[nodiscard]] Result<void> together(const std::function<Result<void>()>& changes);

    // Recipes
    /// All recipes, by title.
    [[nodiscard]] Result<std::vector<ShelvedRecipe>> recipes() const;
    /// Those whose title, foods, note or steps hold all words, each as the start of a word or in
    /// its other number ("tomatoes" finds "tomato"). No words, no recipes.
    [[nodiscard]] Result<std::vector<ShelvedRecipe>> find(std::string_view words) const;
    /// Adds a recipe with a draft; answers its new id, made from the title ("charred-prawns").
    [[nodiscard]] Result<std::string> addRecipe(const Json& document, const std::string& at);
    /// The recipe of that id or unique start of a title (letter case does not matter).
    /// Fails: RecipeNotFound, RecipeAmbiguous ("known": the titles).
    [[nodiscard]] Result<std::string> recipeNamed(std::string_view idOrTitle) const;

    // Drafts
    [[nodiscard]] Result<StoredDraft> draft(const std::string& recipe) const;
    /// Fails: EditDoesNotFit, where the edits do not lead from the draft as it is.
    [[nodiscard]] Result<void> journal(const std::string& recipe, const JournalChange& change);

    // Revisions
    /// Keeps a revision; answers its number. The draft goes on from it, with its undo history.
    /// Fails: RevisionNotFound (the parent).
    [[nodiscard]] Result<int> keep(const std::string& recipe, const RevisionToKeep& revision);
    [[nodiscard]] Result<std::vector<RevisionSummary>> revisions(const std::string& recipe) const;
    /// Fails: RevisionNotFound.
    [[nodiscard]] Result<KeptRevision> revision(const std::string& recipe, int number) const;
    /// The same without what only people read. Fails: RevisionNotFound.
    [[nodiscard]] Result<StoredRevision> stored(const std::string& recipe, int number) const;

    // Foods
    /// The version of a row that the kitchen used first; an own food in the version that the row
    /// names. Nothing where there is neither.
    [[nodiscard]] Result<std::optional<TableFood>> food(const TableRow& row) const;
    /// Copies rows in, each once for each content.
    [[nodiscard]] Result<void> copyIn(const std::vector<TableFood>& foods);
    /// In how many recipes each row is, in drafts or revisions.
    [[nodiscard]] Result<UsedRows> usedRows() const;
    /// The recipes that use a row, by title; of an own food, in whatever version.
    [[nodiscard]] Result<std::vector<FoodUse>> recipesUsing(const TableRow& row) const;

    // Own foods
    /// All, also those out of use or merged.
    [[nodiscard]] Result<std::vector<OwnFoodRecord>> ownFoods() const;
    /// Every version of one, the first first. Fails: OwnFoodNotFound.
    [[nodiscard]] Result<std::vector<OwnFood>> ownFoodVersions(const std::string& id) const;
    /// Saves a food as its next version, which counts from now on. A food whose number is not there
    /// yet is a new one; without a number it is given one. Answers its row. Fails:
    /// OwnFoodMergedBefore.
    [[nodiscard]] Result<TableRow> saveOwnFood(const OwnFood& own, const std::string& at);
    /// Writes down what happens to one. Fails: OwnFoodNotFound, OwnFoodIntoItself.
    [[nodiscard]] Result<void> addOwnFoodEvent(const OwnFoodEvent& event);

    // Photographs of packages
    /// Keeps one, once; answers the SHA-256 of its bytes, by which labels name it. Fails:
    /// PhotoTooLarge ("most"), PhotoNotAnImage (neither JPEG nor PNG).
    [[nodiscard]] Result<std::string> keepPhoto(std::string_view bytes, const std::string& at);
    /// The bytes of one; nothing where it is not here. Fails: PhotoChanged.
    [[nodiscard]] Result<std::optional<std::string>> photo(const std::string& hash) const;

    // Ledger
    /// Appends what a scale showed; answers the entry with its sequence, previous hash and hash.
    /// Whatever entry it names (refersTo, tare, takenFrom, series.before) must be an indication of
    /// the ledger. Fails: LedgerIdUsed, LedgerEntryNotFound and ReadingNotFound (what it names is
    /// not there, is no indication); ReadingOverruled (it supersedes, leaves out or takes in what
    /// was superseded); ReadingNotLeftOut (it gives a reason for what counts, or takes it in where
    /// it is of no series, or was said to be as weighed before); and like readEntry().
    [[nodiscard]] Result<ChainedEntry> record(const LedgerEntry& entry);
    [[nodiscard]] Result<std::vector<ChainedEntry>> ledger() const;
    [[nodiscard]] Result<LedgerEnd> ledgerEnd() const;
    /// Whether an entry of the ledger has that hash: the head as an older printout names it.
    [[nodiscard]] Result<bool> hasLedgerHash(const std::string& hash) const;
    /// Hands the entries on one by one, first to last, in little memory, until `each` answers
    /// false.
    [[nodiscard]] Result<void> readLedger(
        const std::function<bool(const ChainedEntry&)>& each) const;
    /// At most `most` indications (entries of the kinds Shown, Checked and Vessel) before a
    /// sequence, the newest ones; 0: from the end. With them every entry that they refer to or that
    /// speaks of them (refersTo), and the first that weighed with each of them; all by sequence.
    [[nodiscard]] Result<std::vector<ChainedEntry>> ledgerPage(long long before, int most) const;
    /// The entries of a series, with every entry that they refer to or that speaks of them, by
    /// sequence; none where there is no such series. Letter case and blanks of the food do not
    /// matter.
    [[nodiscard]] Result<std::vector<ChainedEntry>> seriesEntries(const SeriesKey& key) const;
    /// All series, by food, kind and what is counted.
    [[nodiscard]] Result<std::vector<SeriesSummary>> seriesKept() const;
    /// The entries Scale, Checked and Vessel, and those that speak of them, by sequence.
    [[nodiscard]] Result<std::vector<ChainedEntry>> equipmentEntries() const;
    /// The checks of all scales.
    [[nodiscard]] Result<ScaleChecks> scaleChecks() const;
    /// The entry whose id begins so, with the same others as of a page, by sequence.
    /// Fails: ReadingNotFound, also where several begin so.
    [[nodiscard]] Result<std::vector<ChainedEntry>> entriesAbout(const std::string& id) const;

    // Care
    /// SQLite's own checks of pages, tables, indexes and references, the hash chain, every content
    /// hash, and that revisions hold what the ledger showed when they were kept.
    ///
    /// Of the ledger it finds an edit, a deletion, an insertion, another order and a lost end, and
    /// names the first entry that is not what was recorded: by the chain, and at the end by the
    /// table ledger_end, which every recording moves on, and by the newest entry that each revision
    /// names. These show accidents and careless hands. Somebody who means to can forge the file
    /// whole, with all hashes, ends and revisions (of a revision, its hash covers the document and
    /// not the entry that it names): against that stands a head that was printed before, see
    /// hasLedgerHash().
    [[nodiscard]] Result<KitchenCheck> verify() const;
    /// A whole copy in a new file, all or nothing. Fails: KitchenExists, KitchenNotWritable.
    [[nodiscard]] Result<void> backUp(const std::string& copy) const;

private:
    explicit Kitchen(std::unique_ptr<KitchenStore> store);
    std::unique_ptr<KitchenStore> store_;
};

}  // namespace nettare
