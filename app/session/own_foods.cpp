#include "app/session/own_foods.h"

#include <QPointer>
#include <QUndoCommand>

#include <algorithm>

#include "app/session/now.h"

namespace nettare {

/// What happened to an own food, and what takes it back. It happened already when it is pushed.
class OwnFoodCommand : public QUndoCommand {
public:
    OwnFoodCommand(OwnFoods& foods, OwnFoodEvent event, OwnFoodEvent back, const QString& text)
        : QUndoCommand{text}, foods_{foods}, event_{std::move(event)}, back_{std::move(back)} {}

    void redo() override {
        if (done_) foods_.post(event_);
        done_ = true;
    }
    void undo() override { foods_.post(back_); }

private:
    OwnFoods& foods_;
    OwnFoodEvent event_, back_;
    bool done_ = false;
};

struct OwnFoods::Loaded {
    std::vector<OwnFoodRecord> all;
    UsedRows used;
    std::vector<TableFood> usedFoods;
};

namespace {

/// A row from its text, as UsedRows has it.
TableRow rowNamed(const std::string& text) {
    const std::size_t first = text.find(' ');
    const std::size_t last = text.rfind(' ');
    return {text.substr(0, first), text.substr(first + 1, last - first - 1), text.substr(last + 1)};
}

QString nameIn(const OwnFoodRecord* record) {
    return record == nullptr ? QString{} : QString::fromStdString(record->current.food.name);
}

/// A draft that uses one of the other foods is told by that one.
void addUse(std::vector<FoodUse>& all, FoodUse use) {
    const auto known = std::ranges::find(all, use.recipe, &FoodUse::recipe);
    if (known == all.end()) {
        all.push_back(std::move(use));
        return;
    }
    if (use.inDraft) {
        known->inDraft = true;
        known->draftRow = use.draftRow;
    }
    if (use.newestRevision)
        known->newestRevision = std::max(known->newestRevision.value_or(0), *use.newestRevision);
}

OwnFoodEvent eventOf(const std::string& id, OwnFoodEventKind kind) {
    return {id, kind, 0, {}, now()};
}

OwnFoodEvent countsAgain(const TableRow& row) {
    return {row.number, OwnFoodEventKind::Counts, std::stoi(row.release), {}, now()};
}

}  // namespace

OwnFoods::OwnFoods(StoreThread& store, std::shared_ptr<Kitchen> kitchen, QObject* parent)
    : QObject{parent}, store_{store}, kitchen_{std::move(kitchen)} {}

const OwnFoodRecord* OwnFoods::record(const std::string& id) const {
    const auto found = std::ranges::find(all_, id, &OwnFoodRecord::id);
    return found == all_.end() ? nullptr : &*found;
}

const OwnFoodRecord* OwnFoods::standingFor(const std::string& id) const {
    const OwnFoodRecord* found = record(id);
    for (std::size_t i = 0; i < all_.size() && found != nullptr && found->stays; ++i)
        found = record(*found->stays);
    return found;
}

std::vector<std::string> OwnFoods::idsOf(const std::string& id) const {
    std::vector<std::string> ids{id};
    for (const OwnFoodRecord& each : all_)
        if (const OwnFoodRecord* stands = standingFor(each.id());
            each.id() != id && stands != nullptr && stands->id() == id)
            ids.push_back(each.id());
    return ids;
}

const TableFood* OwnFoods::food(const TableRow& row) const {
    if (const OwnFoodRecord* own = isOwn(row) ? record(row.number) : nullptr;
        own != nullptr && own->current.food.row == row)
        return &own->current.food;
    const auto used = std::ranges::find(usedFoods_, row, &TableFood::row);
    return used == usedFoods_.end() ? nullptr : &*used;
}

void OwnFoods::load() {
    store_.post(
        this,
        [kitchen = kitchen_]() -> Result<Loaded> {
            auto all = kitchen->ownFoods();
            if (!all) return fail(all.error());
            auto used = kitchen->usedRows();
            if (!used) return fail(used.error());
            Loaded loaded{std::move(*all), std::move(*used), {}};
            for (const auto& [text, recipes] : loaded.used)
                if (auto food = kitchen->food(rowNamed(text)); food && *food)
                    loaded.usedFoods.push_back(std::move(**food));
            return loaded;
        },
        [this](Result<Loaded> loaded) {
            if (!loaded)
                emit failed(loaded.error());
            else
                take(std::move(*loaded));
        });
}

void OwnFoods::take(Loaded loaded) {
    all_ = std::move(loaded.all);
    used_ = std::move(loaded.used);
    usedFoods_ = std::move(loaded.usedFoods);
    std::ranges::sort(all_, {}, [](const OwnFoodRecord& own) { return own.current.food.name; });
    std::ranges::sort(usedFoods_, {}, [this](const TableFood& food) {
        return std::pair{-used_.find(food.row.text())->second, std::string_view{food.name}};
    });
    emit changed();
}

void OwnFoods::save(const OwnFood& own, QObject* receiver, std::function<void(TableRow)> done) {
    saveWithPhoto(own, {}, receiver, std::move(done));
}

void OwnFoods::saveWithPhoto(const OwnFood& own, const std::string& photo, QObject* receiver,
                             std::function<void(TableRow)> done) {
    const OwnFoodRecord* const before = record(own.food.row.number);
    const std::optional<TableRow> counted =
        before != nullptr ? std::optional{before->current.food.row} : std::nullopt;
    store_.post(
        this,
        [kitchen = kitchen_, own, photo, at = now()]() -> Result<TableRow> {
            if (photo.empty()) return kitchen->saveOwnFood(own, at);
            Result<TableRow> row;
            const auto both = kitchen->together([&]() -> Result<void> {
                if (const auto kept = kitchen->keepPhoto(photo, at); !kept)
                    return fail(kept.error());
                row = kitchen->saveOwnFood(own, at);
                return row ? Result<void>{} : Result<void>{fail(row.error())};
            });
            return both ? row : Result<TableRow>{fail(both.error())};
        },
        [this, counted, name = own.food.name, guard = QPointer<QObject>{receiver},
         done = std::move(done)](Result<TableRow> row) {
            if (!row) return emit failed(row.error());
            wasSaved(counted, *row, name);
            if (guard) done(*row);
        });
}

void OwnFoods::wasSaved(const std::optional<TableRow>& before, const TableRow& row,
                        const std::string& name) {
    const OwnFoodEvent back =
        before ? countsAgain(*before) : eventOf(row.number, OwnFoodEventKind::Retired);
    const OwnFoodEvent again =
        before ? countsAgain(row) : eventOf(row.number, OwnFoodEventKind::Returned);
    const QString text = before ? tr("change of %1") : tr("new food %1");
    stack_.push(new OwnFoodCommand{*this, again, back, text.arg(QString::fromStdString(name))});
    load();
}

void OwnFoods::retire(const std::string& id) {
    happen(eventOf(id, OwnFoodEventKind::Retired), eventOf(id, OwnFoodEventKind::Returned),
           tr("%1 out of use").arg(nameIn(record(id))));
}

void OwnFoods::takeBackIntoUse(const std::string& id) {
    happen(eventOf(id, OwnFoodEventKind::Returned), eventOf(id, OwnFoodEventKind::Retired),
           tr("%1 in use again").arg(nameIn(record(id))));
}

void OwnFoods::merge(const std::string& goes, const std::string& stays) {
    OwnFoodEvent merged = eventOf(goes, OwnFoodEventKind::Merged);
    merged.stays = stays;
    happen(merged, eventOf(goes, OwnFoodEventKind::Parted),
           tr("merging of %1").arg(nameIn(record(goes))));
}

void OwnFoods::happen(const OwnFoodEvent& event, const OwnFoodEvent& back, const QString& text) {
    store_.post(
        this, [kitchen = kitchen_, event] { return kitchen->addOwnFoodEvent(event); },
        [this, event, back, text](const Result<void>& done) {
            if (!done) return emit failed(done.error());
            stack_.push(new OwnFoodCommand{*this, event, back, text});
            load();
        });
}

void OwnFoods::post(const OwnFoodEvent& event) {
    store_.post(
        this,
        [kitchen = kitchen_, event] {
            OwnFoodEvent again = event;
            again.at = now();
            return kitchen->addOwnFoodEvent(again);
        },
        [this](const Result<void>& done) {
            if (!done) emit failed(done.error());
            load();
        });
}

void OwnFoods::askUses(const std::vector<TableRow>& rows, QObject* receiver,
                       std::function<void(std::vector<FoodUse>)> done) {
    store_.post(
        receiver,
        [kitchen = kitchen_, rows]() -> Result<std::vector<FoodUse>> {
            std::vector<FoodUse> all;
            for (const TableRow& row : rows) {
                auto uses = kitchen->recipesUsing(row);
                if (!uses) return uses;
                for (FoodUse& use : *uses) addUse(all, std::move(use));
            }
            return all;
        },
        [this, done = std::move(done)](Result<std::vector<FoodUse>> uses) {
            if (!uses)
                emit failed(uses.error());
            else
                done(std::move(*uses));
        });
}

void OwnFoods::askVersions(const std::string& id, QObject* receiver,
                           std::function<void(std::vector<OwnFood>)> done) {
    store_.post(
        receiver, [kitchen = kitchen_, id] { return kitchen->ownFoodVersions(id); },
        [this, done = std::move(done)](Result<std::vector<OwnFood>> versions) {
            if (!versions)
                emit failed(versions.error());
            else
                done(std::move(*versions));
        });
}

void OwnFoods::askMoved(const std::string& id, QObject* receiver,
                        std::function<void(Result<std::vector<MovedRevision>>)> done) {
    const OwnFoodRecord* const own = record(id);
    if (own == nullptr) return done(fail(Error{ErrorCode::OwnFoodNotFound}.with("found", id)));
    store_.post(
        receiver,
        [kitchen = kitchen_, id, food = own->current.food] {
            return figuresMovedBy(*kitchen, id, food);
        },
        std::move(done));
}

void OwnFoods::readPhoto(const QString& path, QObject* receiver,
                         std::function<void(Result<ReadPhoto>)> done) {
    store_.post(
        receiver, [path] { return readPhotoFile(path); }, std::move(done));
}

void OwnFoods::askPhoto(const std::string& sha256, QObject* receiver,
                        std::function<void(QImage)> done) {
    store_.post(
        receiver,
        [kitchen = kitchen_, sha256]() -> Result<QImage> {
            const auto bytes = kitchen->photo(sha256);
            if (!bytes) return fail(bytes.error());
            return *bytes ? imageOfPhoto(**bytes) : Result<QImage>{QImage{}};
        },
        [this, done = std::move(done)](Result<QImage> image) {
            if (!image)
                emit failed(image.error());
            else
                done(std::move(*image));
        });
}

}  // namespace nettare
