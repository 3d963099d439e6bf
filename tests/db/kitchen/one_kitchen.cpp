#include "one_kitchen.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <catch2/catch.hpp>

using namespace nettare;

std::string said(const Error& error) {
    std::string text =
        "error " + std::to_string(static_cast<int>(error.code)) + " " + error.pointer;
    for (const ErrorValue& value : error.values) text += ", " + value.name + ": " + value.text;
    return text;
}

OneKitchen::OneKitchen() {
    const auto made = Kitchen::create(path_, kNoon);
    if (!made) FAIL(said(made.error()));
}

OneKitchen::~OneKitchen() {
    if (checked_) CHECK(pagesOf(path_) == "ok");
}

Kitchen OneKitchen::open(KitchenAccess access) const {
    auto kitchen = Kitchen::open(path_, access);
    if (!kitchen) FAIL(said(kitchen.error()));
    return std::move(*kitchen);
}

std::string pagesOf(const std::string& path) {
    try {
        SQLite::Database database{path, SQLite::OPEN_READWRITE};
        std::string found = database.execAndGet("PRAGMA integrity_check").getString();
        SQLite::Statement references{database, "PRAGMA foreign_key_check"};
        if (references.executeStep()) found += ", a reference leads nowhere";
        return found;
    } catch (const SQLite::Exception& cause) {
        return cause.what();
    }
}

void runSql(const std::string& path, const std::string& sql) {
    SQLite::Database database{path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    database.exec(sql);
}

std::string askSql(const std::string& path, const std::string& sql) {
    SQLite::Database database{path, SQLite::OPEN_READWRITE};
    return database.execAndGet(sql).getString();
}
