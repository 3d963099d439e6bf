#include <algorithm>
#include <limits>

#include "core/support/sha256.h"
#include "db/kitchen/stored_json.h"
#include "db/kitchen/verify_parts.h"

namespace nettare {

namespace {

/// Where a revision's own end of the ledger is lost, all that is left may be before it.
constexpr std::int64_t kAnyEntry = std::numeric_limits<std::int64_t>::max();

struct RevisionName {
    std::string recipe;
    std::int64_t number;
    std::int64_t ledgerEnd = 0;  ///< sequence of the newest entry when it was kept
};

Error faultIn(const KitchenStore& store, const RevisionName& name, ErrorCode code) {
    return store.error(code)
        .with("recipe", name.recipe)
        .with("revision", std::to_string(name.number));
}

const Json* entryCalled(const Json::Array& entries, const std::string& id) {
    for (const Json& entry : entries)
        if (textIn(entry, "id") == id) return &entry;
    return nullptr;
}

/// An indication of a document beside a ledger entry: what the scale showed, and of what kind.
bool agrees(const Json& document, const Json& indication, const Json& entry) {
    const Json* scale = entryCalled(entriesIn(document, "scales"), textIn(indication, "scale"));
    return scale != nullptr && textIn(indication, "shown") == textIn(entry, "shown") &&
           textIn(*scale, "unit") == textIn(entry, "unit") &&
           textIn(*scale, "readability") == textIn(entry, "readability") &&
           (textIn(entry, "kind") != "shown" ||
            textIn(indication, "state") == textIn(entry, "state"));
}

/// True where the ledger does not know the indication, or one of its entries up to when the
/// revision was kept says the same.
bool isAsWeighed(KitchenStore& store, const RevisionName& name, const Json& document,
                 const Json& indication) {
    Query row = store.query(
        "SELECT entry, sequence FROM ledger WHERE recipe = ? AND indication = ? UNION ALL "
        "SELECT entry, sequence FROM ledger WHERE id = ?");
    const std::string id{textIn(indication, "id")};
    row.with(name.recipe).with(id).with(id);
    bool known = false;
    while (row.next()) {
        const auto entry = parseJson(row.text(0));
        const bool before = row.number(1) <= name.ledgerEnd;
        if (before && entry && agrees(document, indication, *entry)) return true;
        known = true;
    }
    return !known;
}

void checkIndications(KitchenStore& store, const RevisionName& name, const Json& document,
                      KitchenCheck& check) {
    for (const Json& indication : entriesIn(document, "indications"))
        if (!isAsWeighed(store, name, document, indication))
            check.faults.push_back(faultIn(store, name, ErrorCode::RevisionNotAsWeighed)
                                       .with("indication", textIn(indication, "id")));
}

bool isPinned(KitchenStore& store, const RevisionName& name, const Json& row) {
    Query pinned = store.query(
        "SELECT 1 FROM revision_food AS pin JOIN food_version AS food ON food.hash = pin.version "
        "WHERE pin.recipe = ? AND pin.number = ? AND food.table_name = ? AND food.release = ? AND "
        "food.number = ?");
    pinned.with(name.recipe).with(name.number);
    pinned.with(textIn(row, "table")).with(textIn(row, "release")).with(textIn(row, "number"));
    return pinned.next();
}

void checkPinnedFoods(KitchenStore& store, const RevisionName& name, const Json& document,
                      KitchenCheck& check) {
    for (const Json& food : entriesIn(document, "foods")) {
        const Json* row = food.find("table");
        if (row != nullptr && !isPinned(store, name, *row))
            check.faults.push_back(faultIn(store, name, ErrorCode::RevisionFoodsChanged)
                                       .with("found", textIn(food, "name")));
    }
}

/// Where the entry of that hash stands; 0 for the empty hash of an empty ledger, nothing where the
/// ledger has lost it.
std::optional<std::int64_t> placeOfHash(KitchenStore& store, const std::string& hash) {
    if (hash.empty()) return 0;
    Query row = store.query("SELECT sequence FROM ledger WHERE hash = ?");
    row.with(hash);
    return row.next() ? std::optional{row.number(0)} : std::nullopt;
}

/// A ledger only grows, so that no revision was kept with a later end of it than one kept after.
/// Of two that cannot both be right, the one that names the later entry is reported.
void checkOrderOfEnds(KitchenStore& store, KitchenCheck& check) {
    std::int64_t earliest = kAnyEntry;
    Query row =
        store.query("SELECT recipe, number, ledger_head FROM revision ORDER BY position DESC");
    while (row.next()) {
        const auto end = placeOfHash(store, row.text(2));
        if (!end) continue;
        if (*end > earliest)
            check.faults.push_back(
                faultIn(store, {row.text(0), row.number(1)}, ErrorCode::RevisionChanged));
        earliest = std::min(earliest, *end);
    }
}

}  // namespace

void checkRevisions(KitchenStore& store, KitchenCheck& check) {
    checkOrderOfEnds(store, check);
    Query row = store.query(
        "SELECT recipe, number, document_hash, document, figures, ledger_head FROM revision "
        "ORDER BY recipe, number");
    while (row.next()) {
        ++check.revisions;
        const auto end = placeOfHash(store, row.text(5));
        const RevisionName name{row.text(0), row.number(1), end.value_or(kAnyEntry)};
        const std::string text = row.text(3);
        const auto document = parseJson(text);
        if (!end) check.faults.push_back(faultIn(store, name, ErrorCode::LedgerShortened));
        if (sha256(text) != row.text(2) || !document || !parseJson(row.text(4))) {
            check.faults.push_back(faultIn(store, name, ErrorCode::RevisionChanged));
            continue;
        }
        checkIndications(store, name, *document, check);
        checkPinnedFoods(store, name, *document, check);
    }
}

}  // namespace nettare
