#include "app/bench/bench_desk.h"

#include <algorithm>
#include <iterator>

#include "app/scale/weighing.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "app/sheet/document_texts.h"
#include "core/edit/series_edits.h"
#include "core/edit/weighing_edits.h"

namespace nettare {

namespace {

constexpr int kPageReadings = 100;

/// True where a document's reading is of that entry. Ids of entries hold everywhere, the names that
/// a document has for its indications in that document alone. Of what was taken from a jar the
/// entry is what the jar showed after: to the document the tare.
bool isReadingOf(const Json& reading, const LedgerEntry& entry, bool isOfDocument) {
    const bool isFromJar = !entry.takenFrom.empty();
    const std::string shown = memberText(&reading, isFromJar ? "tare" : "gross");
    if (shown == entry.id)
        return !isFromJar || isOfDocument || memberText(&reading, "gross") == entry.takenFrom;
    return isOfDocument && !entry.indication.empty() && shown == entry.indication;
}

}  // namespace

BenchDesk::BenchDesk(KitchenSession& kitchen, QObject* parent)
    : QObject{parent}, kitchen_{kitchen} {
    connect(&kitchen_, &KitchenSession::recorded, this, &BenchDesk::reload);
}

void BenchDesk::reload() {
    const int most = std::max(kPageReadings, static_cast<int>(ledger_.size()));
    kitchen_.askKitchen(
        this, [this, most, load = ++loads_](const Kitchen& kitchen) -> std::function<void()> {
            auto state = std::make_shared<Result<BenchState>>(readBench(kitchen, most));
            return [this, state, load] {
                if (load != loads_) return;
                if (*state)
                    show(std::move(**state));
                else
                    emit failed(state->error());
            };
        });
    if (wanted_) loadSeries();
}

void BenchDesk::show(BenchState state) {
    equipment_ = std::move(state.equipment);
    ledger_ = std::move(state.page.readings);
    tares_ = std::move(state.page.tares);
    hasOlder_ = state.page.hasOlder;
    end_ = std::move(state.end);
    kept_ = std::move(state.series);
    emit equipmentChanged();
    emit ledgerChanged();
}

void BenchDesk::setChain(const ChainState& state) {
    chain_ = state;
    emit ledgerChanged();
}

const KnownScale* BenchDesk::scale() const {
    const auto chosen = std::ranges::find(equipment_.scales, scale_, &KnownScale::name);
    if (chosen != equipment_.scales.end()) return &*chosen;
    return equipment_.scales.empty() ? nullptr : &equipment_.scales.front();
}

void BenchDesk::chooseScale(const QString& name) {
    scale_ = name.toStdString();
    emit equipmentChanged();
}

void BenchDesk::readOlder() {
    if (!hasOlder_ || ledger_.empty()) return;
    const long long before = ledger_.back().chained.sequence;
    kitchen_.askKitchen(
        this, [this, before, load = loads_](const Kitchen& kitchen) -> std::function<void()> {
            auto page = std::make_shared<Result<LedgerPage>>(
                readLedgerPage(kitchen, before, kPageReadings));
            return [this, page, before, load] {
                // Asked twice, or read anew meanwhile.
                if (load != loads_ || ledger_.back().chained.sequence != before) return;
                if (!*page) {
                    emit failed(page->error());
                    return;
                }
                std::ranges::move((*page)->readings, std::back_inserter(ledger_));
                std::ranges::move((*page)->tares, std::back_inserter(tares_));
                hasOlder_ = (*page)->hasOlder;
                emit ledgerChanged();
            };
        });
}

void BenchDesk::showSeries(const SeriesKey& key, const std::vector<std::string>& tags) {
    if (!wanted_ || !sameSeries(*wanted_, key)) {
        others_ = 0;
        enough_ = 0;
    }
    wanted_ = key;
    wantedTags_ = tags;
    loadSeries();
}

void BenchDesk::showSeriesAsSplit(const SeriesKey& key) {
    const bool isShown = wanted_ && sameSeries(*wanted_, key);
    showSeries(key, isShown ? wantedTags_ : std::vector<std::string>{});
}

void BenchDesk::loadSeries() {
    PoolChoice pool = kitchen_.pools().of(*wanted_, wantedTags_).value_or(PoolChoice{});
    kitchen_.askKitchen(
        this,
        [this, key = *wanted_, tags = wantedTags_, pool = std::move(pool),
         look = ++looks_](const Kitchen& kitchen) -> std::function<void()> {
            auto read = std::make_shared<Result<ReadSeries>>(readSeries(kitchen, key, tags, pool));
            return [this, read, look] {
                if (look != looks_) return;
                if (*read)
                    finishSeries(std::move(**read));
                else
                    emit failed(read->error());
            };
        });
}

// What the tables say of a food is known here, and judging many readings belongs to the thread.
void BenchDesk::finishSeries(ReadSeries series) {
    BenchSeries& shown = series.shown;
    if (const auto row = rowNamed(shown.row))
        if (const auto food = kitchen_.food(*row)) holdAgainst(shown, *food);
    shown.others = others_;
    shown.enough = enough_;
    kitchen_.askKitchen(this,
                        [this, judged = std::make_shared<ReadSeries>(std::move(series)),
                         look = ++looks_](const Kitchen&) -> std::function<void()> {
                            judge(*judged);
                            return [this, judged, look] {
                                if (look != looks_) return;
                                series_ = judged;
                                emit seriesChanged();
                            };
                        });
}

void BenchDesk::setOthers(double others) {
    if (others_ == others) return;
    others_ = others;
    if (wanted_) loadSeries();
}

void BenchDesk::setEnough(double grams) {
    if (enough_ == grams) return;
    enough_ = grams;
    if (wanted_) loadSeries();
}

void BenchDesk::setPool(const PoolChoice& pool) {
    if (!wanted_ || kitchen_.pools().of(*wanted_, wantedTags_).value_or(PoolChoice{}) == pool)
        return;
    kitchen_.pools().choose(*wanted_, wantedTags_, pool);
    loadSeries();
}

void BenchDesk::record(const std::vector<LedgerEntry>& entries, const std::optional<Edit>& edit,
                       const std::optional<TableFood>& food) {
    if (entries.empty()) return;
    kitchen_.record(entries, edit, food, this,
                    [this, asked = entries.back()](const Result<ChainedEntry>& last) {
                        if (!last) {
                            emit notRecorded(asked);
                            emit failed(last.error());
                            return;
                        }
                        reload();
                        emit recorded(*last);
                    });
}

const LedgerReading* BenchDesk::readingOf(const std::string& id) const {
    for (const auto* const readings : {&ledger_, &tares_}) {
        const auto found = std::ranges::find_if(
            *readings, [&id](const LedgerReading& reading) { return reading.entry().id == id; });
        if (found != readings->end()) return &*found;
    }
    return nullptr;
}

bool BenchDesk::canBind() const {
    return kitchen_.draft() != nullptr && !kitchen_.draft()->readOnly();
}

void BenchDesk::bind(const std::string& id, const std::string& line) {
    const LedgerReading* const reading = readingOf(id);
    if (reading == nullptr || !canBind()) return;
    const LedgerEntry& entry = reading->entry();
    const LedgerReading* const tare =
        readingOf(entry.takenFrom.empty() ? entry.tare : entry.takenFrom);
    DraftSession& draft = *kitchen_.draft();
    const auto edit = bindToReading(draft.document(), line, *reading,
                                    tare == nullptr ? std::nullopt : std::optional{*tare});
    if (!edit) {
        emit failed(edit.error());
        return;
    }
    draft.endTyping();
    if (const auto bound = draft.apply(*edit); !bound) emit failed(bound.error());
}

std::optional<Edit> BenchDesk::unbinding(const std::string& id) const {
    const LedgerReading* const taken = readingOf(id);
    if (taken == nullptr || !canBind()) return {};
    const DraftSession& draft = *kitchen_.draft();
    const bool isOfDraft = taken->entry().recipe == draft.recipe().toStdString();
    for (const Json& reading : entriesIn(draft.document(), "readings")) {
        if (!isReadingOf(reading, taken->entry(), isOfDraft)) continue;
        if (auto edit = unbindReading(draft.document(), memberText(&reading, "id")))
            return std::move(*edit);
    }
    return {};
}

void BenchDesk::recordAbout(EntryKind kind, const std::string& id, const QString& reason) {
    LedgerEntry entry = freshEntry(kind);
    entry.refersTo = id;
    entry.reason = reason.trimmed().toStdString();
    record({entry}, kind == EntryKind::Superseded ? unbinding(id) : std::nullopt);
}

void BenchDesk::takeBack(const std::string& id, const QString& reason) {
    recordAbout(EntryKind::Superseded, id, reason);
}

void BenchDesk::changeReason(const std::string& id, const QString& reason) {
    recordAbout(EntryKind::Reasoned, id, reason);
}

void BenchDesk::leaveOut(const std::string& id, const QString& cause) {
    recordAbout(EntryKind::LeftOut, id, cause);
}

void BenchDesk::takeIn(const std::string& id, const QString& reason) {
    recordAbout(EntryKind::TakenIn, id, reason);
}

void BenchDesk::sayAsWeighed(const std::string& id, const QString& reason) {
    recordAbout(EntryKind::TakenIn, id, reason);
}

void BenchDesk::keepScale(const KnownScale& scale) {
    LedgerEntry entry = freshEntry(EntryKind::Scale);
    entry.scale = scale.name;
    entry.unit = scale.unit;
    entry.readability = scale.readability;
    entry.capacity = scale.capacity;
    scale_ = scale.name;
    record({entry});
}

void BenchDesk::checkScale(const QString& scale, Decimal mass, Decimal shown) {
    const auto known = std::ranges::find(equipment_.scales, scale.toStdString(), &KnownScale::name);
    if (known == equipment_.scales.end()) return;
    LedgerEntry entry = freshEntry(EntryKind::Checked);
    entry.scale = known->name;
    entry.unit = known->unit;
    entry.readability = known->readability;
    entry.mass = mass;
    entry.shown = shown;
    record({entry});
}

void BenchDesk::keepVessel(const QString& name, Decimal tare) {
    const KnownScale* const on = scale();
    if (on == nullptr) return;
    LedgerEntry entry = freshEntry(EntryKind::Vessel);
    entry.vessel = name.trimmed().toStdString();
    entry.scale = on->name;
    entry.unit = on->unit;
    entry.readability = on->readability;
    entry.shown = tare;
    record({entry});
}

LedgerEntry BenchDesk::freshEntry(EntryKind kind) {
    LedgerEntry entry;
    entry.kind = kind;
    entry.origin = EntryOrigin::Typed;
    entry.id = freshUuid();
    entry.at = now();
    return entry;
}

}  // namespace nettare
