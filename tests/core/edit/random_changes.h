#pragma once

#include <random>
#include <string>
#include <vector>

#include "core/edit/edit.h"

namespace nettare {

/// Draws edits that fit a document, of every kind of change, anywhere in it; the document need not
/// be a recipe afterwards. Uses the raw output of mt19937, which is the same everywhere.
class RandomChanges {
public:
    explicit RandomChanges(std::mt19937::result_type seed) : random_{seed} {}

    /// One to three changes that fit one after the other.
    [[nodiscard]] Edit next(const Json& document);

private:
    std::size_t below(std::size_t limit) { return random_() % limit; }
    Change anyChange(const Json& document);
    Json anyValue();

    std::mt19937 random_;
};

/// The places of all objects, or of all lists, of a document.
[[nodiscard]] std::vector<std::string> objectPlaces(const Json& document);
[[nodiscard]] std::vector<std::string> listPlaces(const Json& document);

/// The documents that the program comes with.
[[nodiscard]] std::vector<Json> demoDocuments();

}  // namespace nettare
