#include "published_schema.h"

#include <catch2/catch.hpp>

#include "json_edit.h"

#include <nlohmann/json.hpp>

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

namespace nettare {

namespace {

using SchemaAdapter = valijson::adapters::NlohmannJsonAdapter;

std::string schemaPath(const std::string& file) {
    return NETTARE_RESOURCES "/schema/" + file;
}

/// True where people can read what a part of the schema means, there or where it refers to.
bool isExplained(const Json& schema, const Json& part) {
    if (const Json* target = part.find("$ref")) {
        Json copy = schema;
        return isExplained(schema, partAt(copy, target->text()->substr(1)));
    }
    return part.find("title") != nullptr && part.find("description") != nullptr;
}

}  // namespace

struct PublishedSchema::State {
    valijson::Schema schema;
    valijson::Validator validator;
};

PublishedSchema::PublishedSchema(const std::string& file) : state_{std::make_unique<State>()} {
    const nlohmann::json text = nlohmann::json::parse(fileText(schemaPath(file)));
    valijson::SchemaParser parser;
    parser.populateSchema(SchemaAdapter{text}, state_->schema);
}

PublishedSchema::~PublishedSchema() = default;

bool PublishedSchema::accepts(const std::string& text) {
    const nlohmann::json document = nlohmann::json::parse(text);
    return state_->validator.validate(state_->schema, SchemaAdapter{document}, nullptr);
}

std::string PublishedSchema::objections(const std::string& text) {
    const nlohmann::json document = nlohmann::json::parse(text);
    valijson::ValidationResults results;
    state_->validator.validate(state_->schema, SchemaAdapter{document}, &results);
    std::string all;
    for (const auto& error : results) {
        for (const std::string& step : error.context) all += step;
        all += " " + error.description + "; ";
    }
    return all;
}

bool agree(PublishedSchema& schema, const ShapeReader& reader, const MutatedDocument& mutated) {
    const std::string text = writeJson(mutated.document);
    const Result<void> read = reader(mutated.document);
    const bool accepted = read.has_value();
    if (schema.accepts(text) == accepted) return accepted;
    INFO(mutated.what.substr(0, 300));
    if (accepted)
        FAIL_CHECK("the reader accepts; the schema objects: " << schema.objections(text));
    else
        FAIL_CHECK("the schema accepts; the reader refuses with code "
                   << static_cast<int>(read.error().code) << " at " << read.error().pointer);
    return accepted;
}

void collectMembers(const Json& json, const std::string& pointer,
                    std::vector<std::string>& places) {
    if (const Json::Object* members = json.members())
        for (const JsonMember& member : *members) {
            const std::string place = pointerTo(pointer, std::string_view{member.key});
            places.push_back(place);
            collectMembers(member.value, place, places);
        }
    if (const Json::Array* items = json.items())
        for (std::size_t i = 0; i < items->size(); ++i)
            collectMembers((*items)[i], pointerTo(pointer, i), places);
}

int checkExplained(const std::string& file) {
    const Json schema = jsonOf(fileText(schemaPath(file)));
    std::vector<std::string> places;
    collectMembers(schema, "", places);
    int explained = 0;
    for (const std::string& place : places) {
        const std::string parent = place.substr(0, place.rfind('/'));
        if (!parent.ends_with("/properties") && parent != "/definitions") continue;
        INFO(place);
        Json copy = schema;
        CHECK(isExplained(schema, partAt(copy, place)));
        ++explained;
    }
    return explained;
}

}  // namespace nettare
