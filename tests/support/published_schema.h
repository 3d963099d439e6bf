#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "core/support/result.h"
#include "document_mutations.h"

namespace nettare {

/// A published schema of resources/schema, asked by another program than ours.
class PublishedSchema {
public:
    /// `file` is "recipe.schema.json" or another one.
    explicit PublishedSchema(const std::string& file);
    ~PublishedSchema();
    PublishedSchema(const PublishedSchema&) = delete;
    PublishedSchema& operator=(const PublishedSchema&) = delete;

    [[nodiscard]] bool accepts(const std::string& text);
    /// What the schema objects to, for the message of a test.
    [[nodiscard]] std::string objections(const std::string& text);

private:
    struct State;
    std::unique_ptr<State> state_;
};

/// What a reader answers to a document: nothing, or why not.
using ShapeReader = std::function<Result<void>(const Json&)>;

/// Checks that reader and schema agree, and answers whether the reader accepts.
bool agree(PublishedSchema& schema, const ShapeReader& reader, const MutatedDocument& mutated);

/// The pointers of every member below `pointer`.
void collectMembers(const Json& json, const std::string& pointer, std::vector<std::string>& places);

/// Checks that every property and definition of a schema has title and description, there or where
/// it refers to; answers how many there are.
int checkExplained(const std::string& file);

}  // namespace nettare
