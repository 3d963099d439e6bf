#pragma once

#include <random>
#include <string>
#include <vector>

#include "core/support/json.h"

namespace nettare {

/// A document with something changed, and what was changed, for the message of a test.
struct MutatedDocument {
    std::string what;
    Json document;
};

/// Changes recipe documents in ways that slips, other programs and bad luck do: members lost,
/// renamed, doubled or moved, words misspelt, decimals of other forms, texts of other sizes, lists
/// too short and too long. Uses the raw output of mt19937, which is the same everywhere.
class DocumentMutator {
public:
    DocumentMutator(Json base, std::mt19937::result_type seed);

    [[nodiscard]] MutatedDocument next();

private:
    std::size_t below(std::size_t limit) { return random_() % limit; }
    const std::string& anyPlace(const std::vector<std::string>& places);
    Json anyValue();

    MutatedDocument dropMember();
    MutatedDocument renameKey();
    MutatedDocument addMember();
    MutatedDocument changeKind();
    MutatedDocument replaceText();
    MutatedDocument changeList();
    MutatedDocument swapParts();
    MutatedDocument breakChoice();

    Json base_;
    std::mt19937 random_;
    std::vector<std::string> members_, texts_, lists_, objects_;  ///< pointers into the base
};

}  // namespace nettare
