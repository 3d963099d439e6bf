#pragma once

#include <string>

#include "db/kitchen/kitchen.h"
#include "scratch.h"

/// A folder with one kitchen in it. When the test is over, and its windows with it, SQLite itself
/// looks through the file: pages, indexes and references must be whole.
class OneKitchen {
public:
    /// The kitchen is made, and closed again.
    OneKitchen();
    ~OneKitchen();
    OneKitchen(const OneKitchen&) = delete;
    OneKitchen& operator=(const OneKitchen&) = delete;

    [[nodiscard]] const std::string& path() const { return path_; }
    [[nodiscard]] const Scratch& folder() const { return scratch_; }
    /// Opens it, or fails the test.
    [[nodiscard]] nettare::Kitchen open(
        nettare::KitchenAccess access = nettare::KitchenAccess::Write) const;
    /// For a test that breaks the file on purpose.
    void leaveUnchecked() { checked_ = false; }

private:
    Scratch scratch_;
    std::string path_ = scratch_.path("home.nettare");
    bool checked_ = true;
};

/// What SQLite's integrity_check and foreign_key_check say of a file: "ok".
[[nodiscard]] std::string pagesOf(const std::string& path);

/// The parts of an error in one line, for a test that did not expect it.
[[nodiscard]] std::string said(const nettare::Error& error);

/// Runs SQL on the file behind the kitchen's back; throws SQLite::Exception.
void runSql(const std::string& path, const std::string& sql);
/// The first value of a query as text.
[[nodiscard]] std::string askSql(const std::string& path, const std::string& sql);

inline constexpr auto kNoon = "2026-05-16T12:00:00+02:00";
