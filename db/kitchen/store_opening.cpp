#include "db/kitchen/store_opening.h"

#include <utility>

#include "db/kitchen/check_content.h"
#include "db/kitchen/connection.h"
#include "db/kitchen/copy_database.h"
#include "db/kitchen/file_header.h"
#include "db/kitchen/index_ledger.h"
#include "db/kitchen/kitchen_format.h"
#include "db/kitchen/migrations.h"
#include "db/kitchen/place.h"
#include "db/kitchen/store_search.h"
#include "db/kitchen/uuid.h"
#include "db/open_read_only.h"

namespace nettare {

namespace {

Error ofFormat(ErrorCode code, const std::string& path, int format) {
    return errorIn(path, code)
        .with("found", std::to_string(format))
        .with("known", std::to_string(kitchenFormat()));
}

/// Looks at the header alone; a foreign file is neither locked nor written.
Result<void> checkIdentity(const std::string& path, const KitchenPlace& place) {
    const FileHeader header = readFileHeader(place.file);
    const bool ours = header.isDatabase && header.applicationId == kKitchenApplicationId &&
                      header.userVersion >= 1;
    if (!ours) return fail(errorIn(path, ErrorCode::NotAKitchen));
    if (header.userVersion > kitchenFormat())
        return fail(ofFormat(ErrorCode::KitchenNewer, path, header.userVersion));
    return {};
}

OpenedStore openToWrite(const std::string& path, const KitchenPlace& place, Hold hold) {
    auto store = std::make_unique<KitchenStore>(path, connectToWrite(place.file));
    store->hold = std::move(hold);
    store->file = place.file;
    store->identity = fileAt(place.file);
    if (const auto own = checkContent(store->database, path, place); !own) return fail(own.error());
    const int format = formatOf(store->database);
    if (format > kitchenFormat()) return fail(ofFormat(ErrorCode::KitchenNewer, path, format));
    keepLog(store->database);
    const auto current = bringUpToDate(store->database, place.file, kitchenSchema(), [&] {
        fillSearch(*store);
        fillLedgerIndexes(*store);
    });
    if (!current) {
        Error error = current.error();
        if (error.file == place.file) error.file = path;
        return fail(error);
    }
    return store;
}

OpenedStore openToRead(const std::string& path, const KitchenPlace& place, KitchenAccess access,
                       std::string heldBy) {
    auto database = connectToRead(path, place);
    if (!database) return fail(database.error());
    auto store = std::make_unique<KitchenStore>(path, std::move(*database));
    store->access = access;
    store->writable = false;
    store->heldBy = std::move(heldBy);
    if (const auto own = checkContent(store->database, path, place); !own) return fail(own.error());
    const int format = formatOf(store->database);
    if (format > kitchenFormat()) return fail(ofFormat(ErrorCode::KitchenNewer, path, format));
    if (format < kitchenFormat()) return fail(ofFormat(ErrorCode::KitchenOlder, path, format));
    return store;
}

void makeKitchen(SQLite::Database& database, const std::string& at) {
    database.exec("PRAGMA application_id = " + std::to_string(kKitchenApplicationId));
    SQLite::Statement row{database, "INSERT INTO kitchen VALUES (1, ?, ?)"};
    row.bind(1, newUuid());
    row.bind(2, at);
    row.exec();
}

std::unique_ptr<KitchenStore> emptyInMemory() {
    return std::make_unique<KitchenStore>(
        "", SQLite::Database{":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE});
}

}  // namespace

OpenedStore openStore(const std::string& path, KitchenAccess access) {
    const auto place = placeOf(path);
    if (!place) return fail(place.error());
    if (const auto known = checkIdentity(path, *place); !known) return fail(known.error());
    if (access == KitchenAccess::Read || !place->writable)
        return openToRead(path, *place, access, {});
    HoldAttempt attempt = takeHold(place->file);
    if (attempt.hold) return openToWrite(path, *place, std::move(*attempt.hold));
    return openToRead(path, *place, access, std::move(attempt.heldBy));
}

Result<void> createStore(const std::string& path, const std::string& at) {
    if (auto free = checkNewName(path); !free) return free;
    const std::string partial = partialName(path);
    removeDatabase(partial);
    try {
        SQLite::Database database{partial, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        auto made = migrate(database, path, kitchenSchema(), [&] { makeKitchen(database, at); });
        if (!made) {
            removeDatabase(partial);
            return made;
        }
    } catch (const SQLite::Exception& cause) {
        removeDatabase(partial);
        if (cause.getErrorCode() == SQLITE_CANTOPEN)
            return fail(errorIn(path, ErrorCode::KitchenNotWritable));
        throw;
    }
    return putInPlace(partial, path);
}

OpenedStore storeInMemory(const std::string& at) {
    auto store = emptyInMemory();
    prepareConnection(store->database);
    const auto made =
        migrate(store->database, "", kitchenSchema(), [&] { makeKitchen(store->database, at); });
    if (!made) return fail(made.error());
    return store;
}

OpenedStore copyInMemory(const std::string& path) {
    const auto source = openStore(path, KitchenAccess::Read);
    if (!source) return fail(source.error());
    auto store = emptyInMemory();
    copyContent((*source)->database, store->database);
    prepareConnection(store->database);
    return store;
}

}  // namespace nettare
