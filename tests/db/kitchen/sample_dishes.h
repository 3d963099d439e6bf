#pragma once

#include <string>
#include <string_view>

#include "core/edit/edit.h"
#include "core/food/table_food.h"
#include "core/ledger/ledger_entry.h"
#include "core/support/json.h"
#include "db/kitchen/kitchen.h"

// Small things for a kitchen to hold.

/// A recipe of one food, one step and one indication, "bowl", which showed 340 g.
[[nodiscard]] nettare::Json dish(const std::string& title, const std::string& food = "leek");

/// Typing into the title.
[[nodiscard]] nettare::Edit retitled(const std::string& before, const std::string& after);

/// A change of the journal that adds edits after the first `kept` and applies all.
[[nodiscard]] nettare::JournalChange added(std::size_t kept, std::vector<nettare::Edit> edits);
/// One that moves the cursor only, among so many edits.
[[nodiscard]] nettare::JournalChange cursorAt(std::size_t all, std::size_t cursor);

/// A row of a table, with a value that tells its versions apart.
[[nodiscard]] nettare::TableFood rowOf(const std::string& number, double energyKcal);

/// The beginning of a photograph, and no more of it: enough to be told from other files.
inline constexpr std::string_view kSmallPng{"\x89PNG\r\n\x1a\n with a label", 21};
inline constexpr std::string_view kSmallJpeg{"\xff\xd8\xff\xe0 with a label", 17};

/// What a scale showed; the id is made from the number.
[[nodiscard]] nettare::LedgerEntry shown(int number, const std::string& grams);

/// An entry that speaks of the one with the number `of`, with a reason.
[[nodiscard]] nettare::LedgerEntry about(int number, nettare::EntryKind kind, int of);

/// A document ready to be kept, with rows "1" and "2".
[[nodiscard]] nettare::RevisionToKeep toKeep(const nettare::Json& document,
                                             const std::string& note);
