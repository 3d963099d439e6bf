#include "db/import/csv_mapping.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/support/json_reader.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr int kMappingVersion = 1;
constexpr std::size_t kHeaderLength = 400;
constexpr std::size_t kMarkLength = 40;
constexpr std::size_t kCitationLength = 1000;
constexpr std::size_t kMostColumns = 1000;

constexpr std::array<Word<char>, 3> kSeparatorWords{
    {{"comma", ','}, {"semicolon", ';'}, {"tab", '\t'}}};
constexpr std::array<Word<char>, 2> kDecimalSignWords{{{"point", '.'}, {"comma", ','}}};

/// Another document is refused as that, not by its first odd key.
void readMappingForm(ObjectReader& root) {
    const std::string format = root.text("format", kMarkLength);
    const bool newer = root.has("version");
    if (root.failure()) return;
    if (format != kCsvMappingFormat) {
        root.failure() = Error{ErrorCode::NotAMapping}.with("found", format).at("/format");
        return;
    }
    const double version = newer ? root.number("version") : 0;
    if (root.failure()) return;
    if (!newer)
        root.failure() = Error{ErrorCode::MissingKey}.with("key", "version");
    else if (version != kMappingVersion)
        root.failure() = Error{ErrorCode::NewerFormat}
                             .with("found", numberText(version))
                             .with("known", std::to_string(kMappingVersion))
                             .at("/version");
}

void refuseAt(ObjectReader& reader, ErrorCode code, std::string_view key, std::string_view found) {
    if (!reader.failure())
        reader.failure() = Error{code}.with("found", found).at(pointerTo(reader.pointer(), key));
}

void readMappedComponents(ObjectReader& root, CsvMapping& mapping) {
    for (const auto& [json, pointer] : root.items("components", 1, kComponentCount)) {
        ObjectReader reader{json, pointer, root.failure()};
        MappedComponent mapped;
        mapped.column = reader.text("column", kHeaderLength);
        const std::string tagname = reader.text("component", kMarkLength);
        mapped.unit = reader.text("unit", kMarkLength);
        const auto component = componentNamed(tagname);
        if (!component) {
            refuseAt(reader, ErrorCode::ComponentUnknown, "component", tagname);
            return;
        }
        mapped.component = *component;
        if (std::ranges::count(mapping.components, *component, &MappedComponent::component) > 0)
            refuseAt(reader, ErrorCode::DuplicateId, "component", tagname);
        reader.finish();
        mapping.components.push_back(std::move(mapped));
    }
}

void readMappedOthers(ObjectReader& root, CsvMapping& mapping) {
    for (const auto& [json, pointer] : root.items("others", 0, kMostColumns)) {
        ObjectReader reader{json, pointer, root.failure()};
        MappedOther mapped;
        mapped.column = reader.text("column", kHeaderLength);
        mapped.tagname = reader.text("tagname", kMarkLength);
        mapped.unit = reader.text("unit", kMarkLength);
        const bool twice =
            std::ranges::count(mapping.others, mapped.tagname, &MappedOther::tagname) > 0;
        // What the program knows goes among the components, so that it counts.
        if (twice || componentNamed(mapped.tagname))
            refuseAt(reader, ErrorCode::DuplicateId, "tagname", mapped.tagname);
        reader.finish();
        mapping.others.push_back(std::move(mapped));
    }
}

/// An empty mark is one: an empty field.
void readMissingMarks(ObjectReader& root, CsvMapping& mapping) {
    if (!root.has("missing_marks")) return;
    mapping.missingMarks.clear();
    for (const auto& [json, pointer] : root.items("missing_marks", 0, kMarkLength)) {
        const std::string* mark = json.text();
        if (mark == nullptr || codePoints(*mark) > kMarkLength || !isPlainLine(*mark)) {
            const ErrorCode code = mark == nullptr ? ErrorCode::WrongKind : ErrorCode::TextNotClean;
            if (!root.failure())
                root.failure() = Error{code}
                                     .with("wanted", "text in quotes")
                                     .with("found", mark == nullptr ? kindOf(json) : *mark)
                                     .at(pointer);
            return;
        }
        mapping.missingMarks.push_back(*mark);
    }
}

void setUnlessEmpty(Json& json, std::string_view key, const std::string& text) {
    if (!text.empty()) json.set(key, Json{text});
}

Json componentsJson(const CsvMapping& mapping) {
    Json list = Json::array();
    for (const MappedComponent& mapped : mapping.components) {
        Json item = Json::object();
        item.set("column", Json{mapped.column});
        item.set("component", Json{factsOf(mapped.component).tagname});
        item.set("unit", Json{mapped.unit});
        list.append(std::move(item));
    }
    return list;
}

Json othersJson(const CsvMapping& mapping) {
    Json list = Json::array();
    for (const MappedOther& mapped : mapping.others) {
        Json item = Json::object();
        item.set("column", Json{mapped.column});
        item.set("tagname", Json{mapped.tagname});
        item.set("unit", Json{mapped.unit});
        list.append(std::move(item));
    }
    return list;
}

}  // namespace

Json csvMappingJson(const CsvMapping& mapping) {
    Json json = Json::object();
    json.set("format", Json{kCsvMappingFormat});
    json.set("version", Json{static_cast<double>(kMappingVersion)});
    json.set("table", Json{mapping.table});
    json.set("release", Json{mapping.release});
    json.set("citation", Json{mapping.citation});
    json.set("separator", Json{wordFor(mapping.separator, kSeparatorWords)});
    json.set("decimal_sign", Json{wordFor(mapping.decimalSign, kDecimalSignWords)});
    json.set("number_column", Json{mapping.numberColumn});
    json.set("name_column", Json{mapping.nameColumn});
    setUnlessEmpty(json, "group_column", mapping.groupColumn);
    setUnlessEmpty(json, "other_names_column", mapping.otherNamesColumn);
    setUnlessEmpty(json, "refuse_column", mapping.refuseColumn);
    json.set("grams_of_food", Json{numberText(mapping.gramsOfFood)});
    json.set("components", componentsJson(mapping));
    if (!mapping.others.empty()) json.set("others", othersJson(mapping));
    Json marks = Json::array();
    for (const std::string& mark : mapping.missingMarks) marks.append(Json{mark});
    json.set("missing_marks", std::move(marks));
    json.set("zero_is_missing", Json{mapping.zeroIsMissing});
    return json;
}

Result<CsvMapping> readCsvMapping(const Json& json) {
    std::optional<Error> failure;
    ObjectReader root{json, "", failure};
    readMappingForm(root);
    CsvMapping mapping;
    mapping.table = root.id("table");
    mapping.release = root.text("release", kMarkLength);
    mapping.citation = root.text("citation", kCitationLength);
    mapping.separator = root.oneOf("separator", kSeparatorWords);
    mapping.decimalSign = root.oneOf("decimal_sign", kDecimalSignWords);
    mapping.numberColumn = root.text("number_column", kHeaderLength);
    mapping.nameColumn = root.text("name_column", kHeaderLength);
    mapping.groupColumn = root.optionalText("group_column", kHeaderLength).value_or("");
    mapping.otherNamesColumn = root.optionalText("other_names_column", kHeaderLength).value_or("");
    mapping.refuseColumn = root.optionalText("refuse_column", kHeaderLength).value_or("");
    mapping.gramsOfFood = root.decimal("grams_of_food", NumberSign::Positive).value();
    readMappedComponents(root, mapping);
    readMappedOthers(root, mapping);
    readMissingMarks(root, mapping);
    mapping.zeroIsMissing = root.optionalFlag("zero_is_missing");
    root.finish();
    if (failure) return fail(*failure);
    return mapping;
}

}  // namespace nettare
