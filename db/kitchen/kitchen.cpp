#include "db/kitchen/kitchen.h"

#include "db/kitchen/copy_database.h"
#include "db/kitchen/kitchen_store.h"
#include "db/kitchen/read_ledger.h"
#include "db/kitchen/store_drafts.h"
#include "db/kitchen/store_foods.h"
#include "db/kitchen/store_ledger.h"
#include "db/kitchen/store_opening.h"
#include "db/kitchen/store_own_foods.h"
#include "db/kitchen/store_photos.h"
#include "db/kitchen/store_recipes.h"
#include "db/kitchen/store_revisions.h"
#include "db/kitchen/store_uses.h"
#include "db/kitchen/store_verify.h"

namespace nettare {

Kitchen::Kitchen(std::unique_ptr<KitchenStore> store) : store_{std::move(store)} {}
Kitchen::Kitchen(Kitchen&&) noexcept = default;
Kitchen& Kitchen::operator=(Kitchen&&) noexcept = default;
Kitchen::~Kitchen() = default;

Result<Kitchen> Kitchen::create(const std::string& path, const std::string& at) {
    const auto made = inKitchen(path, [&] { return createStore(path, at); });
    if (!made) return fail(made.error());
    return open(path, KitchenAccess::Write);
}

Result<Kitchen> Kitchen::open(const std::string& path, KitchenAccess access) {
    auto store = inKitchen(path, [&] { return openStore(path, access); });
    if (!store) return fail(store.error());
    return Kitchen{std::move(*store)};
}

Result<Kitchen> Kitchen::inMemory(const std::string& at) {
    auto store = inKitchen("", [&] { return storeInMemory(at); });
    if (!store) return fail(store.error());
    return Kitchen{std::move(*store)};
}

Result<Kitchen> Kitchen::openCopy(const std::string& path) {
    auto store = inKitchen(path, [&] { return copyInMemory(path); });
    if (!store) return fail(store.error());
    return Kitchen{std::move(*store)};
}

const std::string& Kitchen::path() const {
    return store_->path;
}
bool Kitchen::writable() const {
    return store_->writable;
}
const std::string& Kitchen::heldBy() const {
    return store_->heldBy;
}

Result<void> Kitchen::together(const std::function<Result<void>()>& changes) {
    return inKitchen(path(), [&] { return changeTogether(*store_, changes); });
}

Result<std::vector<ShelvedRecipe>> Kitchen::recipes() const {
    return inKitchen(path(),
                     [&]() -> Result<std::vector<ShelvedRecipe>> { return shelf(*store_); });
}
Result<std::vector<ShelvedRecipe>> Kitchen::find(std::string_view words) const {
    return inKitchen(
        path(), [&]() -> Result<std::vector<ShelvedRecipe>> { return shelfWith(*store_, words); });
}
Result<std::string> Kitchen::addRecipe(const Json& document, const std::string& at) {
    return inKitchen(path(), [&] { return addToShelf(*store_, document, at); });
}
Result<std::string> Kitchen::recipeNamed(std::string_view idOrTitle) const {
    return inKitchen(path(), [&] { return shelvedAs(*store_, idOrTitle); });
}

Result<StoredDraft> Kitchen::draft(const std::string& recipe) const {
    return inKitchen(path(), [&] { return storedDraft(*store_, recipe); });
}
Result<void> Kitchen::journal(const std::string& recipe, const JournalChange& change) {
    return inKitchen(path(), [&] { return journalDraft(*store_, recipe, change); });
}

Result<int> Kitchen::keep(const std::string& recipe, const RevisionToKeep& revision) {
    return inKitchen(path(), [&] { return keepRevision(*store_, recipe, revision); });
}
Result<std::vector<RevisionSummary>> Kitchen::revisions(const std::string& recipe) const {
    return inKitchen(path(), [&] { return revisionsOf(*store_, recipe); });
}
Result<KeptRevision> Kitchen::revision(const std::string& recipe, int number) const {
    return inKitchen(path(), [&] { return keptRevision(*store_, recipe, number); });
}
Result<StoredRevision> Kitchen::stored(const std::string& recipe, int number) const {
    return inKitchen(path(), [&] { return storedRevision(*store_, recipe, number); });
}

Result<std::optional<TableFood>> Kitchen::food(const TableRow& row) const {
    return inKitchen(path(), [&] { return firstVersion(*store_, row); });
}
Result<void> Kitchen::copyIn(const std::vector<TableFood>& foods) {
    return inKitchen(path(), [&] { return copyFoodsIn(*store_, foods); });
}

Result<UsedRows> Kitchen::usedRows() const {
    return inKitchen(path(), [&]() -> Result<UsedRows> { return usedRowsIn(*store_); });
}
Result<std::vector<FoodUse>> Kitchen::recipesUsing(const TableRow& row) const {
    return inKitchen(path(),
                     [&]() -> Result<std::vector<FoodUse>> { return usesOf(*store_, row); });
}

Result<std::vector<OwnFoodRecord>> Kitchen::ownFoods() const {
    return inKitchen(path(), [&] { return ownFoodsIn(*store_); });
}
Result<std::vector<OwnFood>> Kitchen::ownFoodVersions(const std::string& id) const {
    return inKitchen(path(), [&] { return ownVersions(*store_, id); });
}
Result<TableRow> Kitchen::saveOwnFood(const OwnFood& own, const std::string& at) {
    return inKitchen(path(), [&] { return addOwnVersion(*store_, own, at); });
}
Result<void> Kitchen::addOwnFoodEvent(const OwnFoodEvent& event) {
    return inKitchen(path(), [&] { return addOwnEvent(*store_, event); });
}

Result<std::string> Kitchen::keepPhoto(std::string_view bytes, const std::string& at) {
    return inKitchen(path(), [&] { return addPhoto(*store_, bytes, at); });
}
Result<std::optional<std::string>> Kitchen::photo(const std::string& hash) const {
    return inKitchen(path(), [&] { return photoBytes(*store_, hash); });
}

Result<ChainedEntry> Kitchen::record(const LedgerEntry& entry) {
    return inKitchen(path(), [&] { return appendEntry(*store_, entry); });
}
Result<std::vector<ChainedEntry>> Kitchen::ledger() const {
    return inKitchen(path(), [&] { return allEntries(*store_); });
}
Result<LedgerEnd> Kitchen::ledgerEnd() const {
    return inKitchen(path(), [&]() -> Result<LedgerEnd> { return ledgerEndIn(*store_); });
}
Result<bool> Kitchen::hasLedgerHash(const std::string& hash) const {
    return inKitchen(path(), [&]() -> Result<bool> { return hasHash(*store_, hash); });
}
Result<void> Kitchen::readLedger(const std::function<bool(const ChainedEntry&)>& each) const {
    return inKitchen(path(), [&] { return eachEntry(*store_, each); });
}
Result<std::vector<ChainedEntry>> Kitchen::ledgerPage(long long before, int most) const {
    return inKitchen(path(), [&] { return entriesBefore(*store_, before, most); });
}
Result<std::vector<ChainedEntry>> Kitchen::seriesEntries(const SeriesKey& key) const {
    return inKitchen(path(), [&] { return entriesOfSeries(*store_, key); });
}
Result<std::vector<SeriesSummary>> Kitchen::seriesKept() const {
    return inKitchen(path(),
                     [&]() -> Result<std::vector<SeriesSummary>> { return seriesIn(*store_); });
}
Result<std::vector<ChainedEntry>> Kitchen::equipmentEntries() const {
    return inKitchen(path(), [&]() -> Result<std::vector<ChainedEntry>> {
        const auto read = equipmentIn(*store_);
        if (!read) return fail(read.error());
        return (*read)->entries;
    });
}
Result<ScaleChecks> Kitchen::scaleChecks() const {
    return inKitchen(path(), [&]() -> Result<ScaleChecks> {
        const auto read = equipmentIn(*store_);
        if (!read) return fail(read.error());
        return (*read)->checks;
    });
}
Result<std::vector<ChainedEntry>> Kitchen::entriesAbout(const std::string& id) const {
    return inKitchen(path(), [&] { return entriesAboutId(*store_, id); });
}

Result<KitchenCheck> Kitchen::verify() const {
    return inKitchen(path(), [&] { return checkKitchen(*store_); });
}
Result<void> Kitchen::backUp(const std::string& copy) const {
    return inKitchen(path(), [&] { return copyDatabase(store_->database, copy); });
}

}  // namespace nettare
