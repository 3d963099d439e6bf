#pragma once

#include <future>
#include <string>
#include <vector>

#include "db/kitchen/kitchen_store.h"

namespace nettare {

/// What SQLite's own look at pages, tables, indexes and constraints finds. Of the table ledger the
/// pages and columns alone: what it would take from each entry once more, JSON and indexes, is
/// looked at with the chain. What cannot be read at all is a finding as well.
[[nodiscard]] std::vector<std::string> wrongPages(SQLite::Database& database);

/// The same beside other work, through a connection of its own; not valid() where the kitchen is
/// small, or where no second connection is to be had.
[[nodiscard]] std::future<std::vector<std::string>> lookAtPagesBeside(KitchenStore& store);

}  // namespace nettare
