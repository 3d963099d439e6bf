#pragma once

#include <iosfwd>
#include <string>

#include "app/command_line/arguments.h"
#include "app/loading/load_dossier.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

/// Adds documents to the kitchen at that path, which is made where it does not exist.
Result<void> addToKitchen(const AddCommand& command, const std::string& path, DossierLoader& loader,
                          std::ostream& out);

/// A line for each recipe: id, newest revision, energy of a portion, title.
Result<void> listRecipes(const Kitchen& kitchen, DossierLoader& loader, std::ostream& out);

/// A line for each revision: number, when, its document's hash, note.
Result<void> listRevisions(const RevisionsCommand& command, const Kitchen& kitchen,
                           std::ostream& out);

/// What was looked at, and a sentence for each fault, a ledger without the head that was named
/// among them; answers how many there are. Fails: NotAHash.
Result<std::size_t> verifyKitchen(const VerifyCommand& command, const Kitchen& kitchen,
                                  std::ostream& out);

/// A whole copy in a new file.
Result<void> backUpKitchen(const BackupCommand& command, const Kitchen& kitchen, std::ostream& out);

}  // namespace nettare
