#include <algorithm>

#include "app/kitchen/draft_document.h"
#include "app/session/kitchen_session.h"
#include "app/session/moved_drafts.h"
#include "app/session/now.h"
#include "core/edit/food_row_edits.h"
#include "db/own_matches.h"

// The part of KitchenSession that is about foods.

namespace nettare {

namespace {

/// What was typed with its slips as the tables took them.
QString corrected(QString words, const std::vector<ForgivenSlip>& slips) {
    for (const ForgivenSlip& slip : slips)
        if (!slip.taken.empty())
            words.replace(QString::fromStdString(slip.typed),
                          QString::fromStdString(slip.taken.front()), Qt::CaseInsensitive);
    return words;
}

/// More recipes than one look at a food should wait for are left out.
constexpr std::size_t kMostSeriesRecipes = 12;

/// The dossier of a draft as it stands. Fails: as its parts do.
Result<Dossier> dossierOfDraft(const Kitchen& kitchen, const std::string& recipe,
                               const FoodTables& tables) {
    const auto draft = kitchen.draft(recipe);
    if (!draft) return fail(draft.error());
    const auto document = documentOf(*draft);
    if (!document) return fail(document.error());
    const auto closure = closureOfDraft(kitchen, *document, tables);
    if (!closure) return fail(closure.error());
    return dossierOf(*document, recipe, *closure);
}

}  // namespace

void KitchenSession::reloadTables() {
    // Each thread has files of its own.
    auto shown = FoodTables::open(places_);
    auto stored = FoodTables::open(places_);
    const std::vector<Error> failures =
        shown ? shown->failures() : std::vector<Error>{shown.error()};
    if (shown) tables_.emplace(std::move(*shown));
    if (stored) storeTables_ = std::make_shared<const FoodTables>(std::move(*stored));
    for (const Error& failure : failures)
        QMetaObject::invokeMethod(
            this, [this, failure] { emit failed(failure); }, Qt::QueuedConnection);
    emit tablesChanged();
}

std::optional<GroupDensity> KitchenSession::groupDensity(const std::string& group) const {
    if (!tables_) return std::nullopt;
    return tables_->groupDensity(group).value_or(std::nullopt);
}

// Own foods that are what the words say come first, those that only begin so last.
FoodSearch KitchenSession::searchFoods(const QString& words, std::size_t most) const {
    FoodSearch search;
    if (tables_)
        search = tables_->search(words.toStdString(), most, own_.used()).value_or(FoodSearch{});
    OwnMatches own = ownMatches(own_.all(), words.toStdString());
    if (own.well.empty() && own.started.empty() && !search.slips.empty())
        own = ownMatches(own_.all(), corrected(words, search.slips).toStdString());
    const std::size_t room = most - std::min(most, own.well.size() + own.started.size());
    if (search.hits.size() > room) search.hits.resize(room);
    search.hits.insert(search.hits.begin(), own.well.begin(), own.well.end());
    search.hits.insert(search.hits.end(), own.started.begin(), own.started.end());
    if (search.hits.size() > most) search.hits.resize(most);
    return search;
}

std::vector<FoodHit> KitchenSession::findFoods(const QString& words, std::size_t most) const {
    return searchFoods(words, most).hits;
}

std::optional<TableFood> KitchenSession::food(const TableRow& row) const {
    if (draft_)
        if (const TableFood* known = draft_->closure().food(row)) return *known;
    if (const TableFood* own = isOwn(row) ? own_.food(row) : nullptr) return *own;
    if (tables_)
        if (auto found = tables_->find(row); found && *found) return **found;
    const TableFood* used = own_.food(row);
    return used != nullptr ? std::optional{*used} : std::nullopt;
}

void KitchenSession::askSeries(const TableRow& row, std::vector<std::string> recipes,
                               QObject* receiver,
                               std::function<void(std::vector<FoodSeries>)> done) {
    if (!storeTables_) return;
    if (recipes.size() > kMostSeriesRecipes) recipes.resize(kMostSeriesRecipes);
    store_.post(
        receiver,
        [kitchen = kitchen_, tables = storeTables_, row, recipes = std::move(recipes)] {
            std::vector<FoodSeries> all;
            for (const std::string& recipe : recipes)
                if (const auto dossier = dossierOfDraft(*kitchen, recipe, *tables))
                    for (FoodSeries& series : seriesOf(*dossier, row))
                        all.push_back(std::move(series));
            return all;
        },
        std::move(done));
}

void KitchenSession::askGroups(QObject* receiver,
                               std::function<void(std::vector<FoodGroup>)> done) {
    if (!storeTables_) return;
    store_.post(
        receiver, [tables = storeTables_] { return tables->groups(); },
        [this, done = std::move(done)](Result<std::vector<FoodGroup>> groups) {
            if (!groups)
                emit failed(groups.error());
            else
                done(std::move(*groups));
        });
}

void KitchenSession::moveDrafts(const std::vector<std::string>& recipes,
                                const std::vector<std::string>& numbers, const TableFood& to) {
    std::vector<std::string> others = recipes;
    if (draft_ && std::erase(others, draft_->recipe().toStdString()) > 0) {
        draft_->endTyping();
        if (const auto edit = moveOwnFoods(draft_->document(), numbers, to.row, to.name))
            if (auto applied = draft_->apply(*edit, to); !applied) emit failed(applied.error());
        draft_->endTyping();
        tellJournal();
    }
    store_.post(
        this,
        [kitchen = kitchen_, moved = DraftsToMove{others, numbers, to}, at = now()] {
            return moved.recipes.empty() ? Result<void>{} : moveDraftsOn(*kitchen, moved, at);
        },
        [this](const Result<void>& moved) {
            if (!moved) return emit failed(moved.error());
            loadShelf();
            own_.load();
        });
}

}  // namespace nettare
