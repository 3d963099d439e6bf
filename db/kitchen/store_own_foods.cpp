#include "db/kitchen/store_own_foods.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <map>

#include "core/food/own_food_json.h"
#include "core/support/sha256.h"
#include "db/kitchen/stored_json.h"
#include "db/kitchen/uuid.h"

namespace nettare {

namespace {

struct EventWord {
    std::string_view word;
    OwnFoodEventKind kind;
};

constexpr std::array<EventWord, 5> kEventWords{{
    {"counts", OwnFoodEventKind::Counts},
    {"retired", OwnFoodEventKind::Retired},
    {"returned", OwnFoodEventKind::Returned},
    {"merged", OwnFoodEventKind::Merged},
    {"parted", OwnFoodEventKind::Parted},
}};

std::string wordOf(OwnFoodEventKind kind) {
    return std::string{std::ranges::find(kEventWords, kind, &EventWord::kind)->word};
}

/// Where a food stands after all that happened to it.
struct Standing {
    int counts = 0;
    bool retired = false;
    std::optional<std::string> stays;

    void take(OwnFoodEventKind kind, int version, const std::string& other) {
        using enum OwnFoodEventKind;
        if (kind == Counts) counts = version;
        if (kind == Retired || kind == Returned) retired = kind == Retired;
        if (kind == Merged) stays = other;
        if (kind == Parted) stays.reset();
    }
};

/// By the foods' UUIDs.
std::map<std::string, Standing> standings(KitchenStore& store) {
    std::map<std::string, Standing> all;
    Query row = store.query(
        "SELECT food, kind, coalesce(version, 0), coalesce(stays, '') FROM own_food_event "
        "ORDER BY position");
    while (row.next())
        if (const auto kind = ownEventKind(row.text(1)))
            all[row.text(0)].take(*kind, static_cast<int>(row.number(2)), row.text(3));
    return all;
}

int versionsOf(KitchenStore& store, const std::string& id) {
    Query row = store.query("SELECT count(*) FROM own_food_version WHERE food = ?");
    row.with(id);
    return row.next() ? static_cast<int>(row.number(0)) : 0;
}

std::string contentOf(KitchenStore& store, const std::string& id, int version) {
    Query row = store.query("SELECT content FROM own_food_version WHERE food = ? AND version = ?");
    row.with(id).with(std::int64_t{version});
    return row.next() ? row.text(0) : std::string{};
}

Error notAnOwnFood(const KitchenStore& store, const std::string& id) {
    return store.error(ErrorCode::OwnFoodNotFound).with("found", id);
}

std::string nameOfOwn(KitchenStore& store, const std::string& id, int version) {
    const auto own = ownVersionFrom(store, contentOf(store, id, version));
    return own ? own->food.name : id;
}

/// Whether the foods that stand for `from`, one after the other, come to `id`.
bool leadsTo(const std::map<std::string, Standing>& all, std::string from, const std::string& id) {
    for (std::size_t i = 0; i <= all.size(); ++i) {
        if (from == id) return true;
        const auto next = all.find(from);
        if (next == all.end() || !next->second.stays) return false;
        from = *next->second.stays;
    }
    return true;
}

/// What happens must fit what happened before.
Result<void> checkEvent(KitchenStore& store, const OwnFoodEvent& event) {
    const auto all = standings(store);
    const auto found = all.find(event.food);
    if (found == all.end()) return fail(notAnOwnFood(store, event.food));
    if (event.kind == OwnFoodEventKind::Counts &&
        (event.version < 1 || event.version > versionsOf(store, event.food)))
        return fail(notAnOwnFood(store, event.food + " " + std::to_string(event.version)));
    if (event.kind != OwnFoodEventKind::Merged) return {};
    if (!all.contains(event.stays)) return fail(notAnOwnFood(store, event.stays));
    if (!leadsTo(all, event.stays, event.food)) return {};
    return fail(store.error(ErrorCode::OwnFoodIntoItself)
                    .with("food", nameOfOwn(store, event.food, found->second.counts)));
}

void writeEvent(KitchenStore& store, const OwnFoodEvent& event) {
    const bool counts = event.kind == OwnFoodEventKind::Counts;
    const char* const sql = event.kind == OwnFoodEventKind::Merged
                                ? "INSERT INTO own_food_event (food, kind, version, at, stays) "
                                  "VALUES (?, ?, ?, ?, ?)"
                                : "INSERT INTO own_food_event (food, kind, version, at) "
                                  "VALUES (?, ?, ?, ?)";
    Query row = store.query(sql);
    row.with(event.food).with(wordOf(event.kind));
    row.with(counts ? std::optional{event.version} : std::nullopt).with(event.at);
    if (event.kind == OwnFoodEventKind::Merged) row.with(event.stays);
    row.run();
}

}  // namespace

std::optional<OwnFoodEventKind> ownEventKind(std::string_view word) {
    const auto found = std::ranges::find(kEventWords, word, &EventWord::word);
    if (found == kEventWords.end()) return std::nullopt;
    return found->kind;
}

Result<OwnFood> ownVersionFrom(const KitchenStore& store, const std::string& text) {
    const auto json = storedJson(store, text, "an own food");
    if (!json) return fail(json.error());
    auto own = readOwnFood(*json);
    if (!own) return fail(damaged(store.path, "an own food"));
    return own;
}

Result<std::vector<OwnFoodRecord>> ownFoodsIn(KitchenStore& store) {
    std::vector<OwnFoodRecord> records;
    for (const auto& [id, standing] : standings(store)) {
        auto own = ownVersionFrom(store, contentOf(store, id, standing.counts));
        if (!own) return fail(own.error());
        records.push_back(
            {std::move(*own), versionsOf(store, id), standing.retired, standing.stays});
    }
    return records;
}

Result<std::vector<OwnFood>> ownVersions(KitchenStore& store, const std::string& id) {
    std::vector<OwnFood> versions;
    Query row = store.query("SELECT content FROM own_food_version WHERE food = ? ORDER BY version");
    row.with(id);
    while (row.next()) {
        auto own = ownVersionFrom(store, row.text(0));
        if (!own) return fail(own.error());
        versions.push_back(std::move(*own));
    }
    if (versions.empty()) return fail(notAnOwnFood(store, id));
    return versions;
}

Result<TableRow> addOwnVersion(KitchenStore& store, const OwnFood& own, const std::string& at) {
    if (const auto open = checkWritable(store); !open) return fail(open.error());
    OwnFood next = own;
    TableRow& row = next.food.row;
    if (!row.number.empty()) {
        const auto all = standings(store);
        const auto found = all.find(row.number);
        if (found != all.end() && found->second.stays)
            return fail(store.error(ErrorCode::OwnFoodMergedBefore).with("food", own.food.name));
    }
    const int version = row.number.empty() ? 1 : versionsOf(store, row.number) + 1;
    row = {std::string{kOwnTable}, std::to_string(version),
           row.number.empty() ? newUuid() : row.number};
    const std::string text = writeJson(ownFoodJson(next));
    // What is stored must be readable again.
    if (const auto again = ownVersionFrom(store, text); !again) return fail(again.error());
    WriteTransaction transaction{store};
    store.query("INSERT INTO own_food_version (hash, content) VALUES (?, ?)")
        .with(sha256(text))
        .with(text)
        .run();
    writeEvent(store, {row.number, OwnFoodEventKind::Counts, version, {}, at});
    transaction.commit();
    return row;
}

Result<void> addOwnEvent(KitchenStore& store, const OwnFoodEvent& event) {
    if (auto open = checkWritable(store); !open) return open;
    if (auto fits = checkEvent(store, event); !fits) return fits;
    WriteTransaction transaction{store};
    writeEvent(store, event);
    transaction.commit();
    return {};
}

Result<std::optional<TableFood>> ownFoodAt(KitchenStore& store, const TableRow& row) {
    int version = 0;
    const char* const end = row.release.data() + row.release.size();
    const auto [rest, wrong] = std::from_chars(row.release.data(), end, version);
    if (wrong != std::errc{} || rest != end) return std::optional<TableFood>{};
    const std::string text = contentOf(store, row.number, version);
    if (text.empty()) return std::optional<TableFood>{};
    auto own = ownVersionFrom(store, text);
    if (!own) return fail(own.error());
    return std::optional<TableFood>{std::move(own->food)};
}

}  // namespace nettare
