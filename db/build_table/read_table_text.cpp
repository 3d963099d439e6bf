#include <algorithm>
#include <map>

#include "db/build_table/read_parts.h"

namespace nettare {

namespace {

constexpr std::string_view kDigestPrefix = "sha256 of ";

Error inFile(ErrorCode code, const std::string& file) {
    Error error{code};
    error.file = file;
    return error;
}

bool isDigest(std::string_view text) {
    return text.size() == 64 && std::ranges::all_of(text, [](char c) {
               return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
           });
}

/// Reads table.txt: three keys that must be there, and one digest per input.
Result<void> readIdentityText(const std::string& folder, TableText& text) {
    const auto table = readTextTable(folder, "table.txt", "key|value");
    if (!table) return fail(table.error());
    std::map<std::string, std::string*> wanted{
        {"table", &text.table}, {"release", &text.release}, {"citation", &text.citation}};
    for (const TextRow& line : table->rows) {
        RowReader row{*table, line};
        const std::string key = row.requiredText();
        const auto place = wanted.find(key);
        const bool digest = key.starts_with(kDigestPrefix);
        if (!digest && place == wanted.end()) row.refuse(ErrorCode::NotOneOf);
        std::string value = row.requiredText();
        if (digest && !isDigest(value)) row.refuse(ErrorCode::NotAnIdentifier);
        if (!row.good()) return fail(row.error());
        if (digest)
            text.inputs.push_back({key.substr(kDigestPrefix.size()), std::move(value)});
        else
            *place->second = std::move(value);
    }
    for (const auto& [key, value] : wanted)
        if (value->empty())
            return fail(inFile(ErrorCode::MissingKey, table->file).with("key", key));
    return {};
}

using Step = Result<void> (*)(const std::string&, FoodList&);

Result<void> readOtherNameFiles(const std::string& folder, FoodList& foods) {
    if (auto read = readNames(folder, "other_names.txt", foods); !read) return read;
    return readNames(folder, "kitchen_names.txt", foods);
}

}  // namespace

Result<TableText> readTableText(const std::string& folder) {
    TableText text;
    if (const auto read = readIdentityText(folder, text); !read) return fail(read.error());
    FoodList foods;
    for (const Step step : {&readFoods, &readComponents, &readSpreads, &readMeasureRows,
                            &readOtherNameFiles, &readTraits})
        if (const auto read = step(folder, foods); !read) return fail(read.error());
    auto everyday = readEveryday(folder, foods);
    if (!everyday) return fail(everyday.error());
    if (foods.all().empty()) return fail(inFile(ErrorCode::TooFewItems, "foods.txt"));
    text.everyday = std::move(*everyday);
    text.foods = std::move(foods.all());
    std::ranges::sort(text.foods, {}, [](const TableFood& food) { return food.row.number; });
    return text;
}

}  // namespace nettare
