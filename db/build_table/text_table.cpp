#include "db/build_table/text_table.h"

#include <fstream>
#include <iterator>

#include "core/support/text.h"

namespace nettare {

namespace {

Result<std::string> readWholeText(const std::string& path) {
    std::ifstream stream{path, std::ios::binary};
    std::string text{std::istreambuf_iterator<char>{stream}, std::istreambuf_iterator<char>{}};
    if (!stream.is_open() || stream.bad()) return fail(ErrorCode::FileNotReadable);
    return text;
}

Error badLine(int line, std::string_view expected, std::string_view found) {
    Error error = Error{ErrorCode::WrongFormat}.with("expected", expected).with("found", found);
    error.line = line;
    return error;
}

std::vector<std::string> fieldsOf(std::string_view line) {
    std::vector<std::string> fields;
    for (const std::string_view field : split(line, '|')) fields.emplace_back(field);
    return fields;
}

/// Takes one line that is no comment: the column names first, rows after.
Result<void> takeLine(TextTable& table, std::string_view text, int line, std::string_view columns) {
    if (table.columns.empty()) {
        if (text != columns) return fail(badLine(line, columns, text));
        table.columns = fieldsOf(text);
        return {};
    }
    TextRow row{.line = line, .fields = fieldsOf(text)};
    if (row.fields.size() != table.columns.size())
        return fail(
            badLine(line, std::to_string(table.columns.size()), std::to_string(row.fields.size())));
    table.rows.push_back(std::move(row));
    return {};
}

Result<TextTable> parseTextTable(std::string_view text, std::string_view columns) {
    TextTable table;
    int line = 0;
    for (const std::string_view content : split(text, '\n')) {
        ++line;
        if (utf8Prefix(content) < content.size()) {
            Error error{ErrorCode::TextNotClean};
            error.line = line;
            return fail(error);
        }
        if (content.empty() || content.front() == '#') continue;
        if (auto taken = takeLine(table, content, line, columns); !taken)
            return fail(taken.error());
    }
    if (table.columns.empty()) return fail(badLine(1, columns, ""));
    return table;
}

}  // namespace

Result<TextTable> readTextTable(const std::string& folder, const std::string& file,
                                std::string_view columns) {
    const auto text = readWholeText(folder + "/" + file);
    Result<TextTable> table =
        text ? parseTextTable(*text, columns) : Result<TextTable>{fail(text.error())};
    if (!table) {
        Error error = table.error();
        error.file = file;
        return fail(error);
    }
    table->file = file;
    return table;
}

}  // namespace nettare
