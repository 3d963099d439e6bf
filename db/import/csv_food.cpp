#include "db/import/csv_food.h"

#include <algorithm>
#include <optional>

#include "core/support/text.h"
#include "db/import/csv_cell.h"
#include "db/import/one_line.h"

namespace nettare {

namespace {

constexpr std::size_t kNumberLength = 64;
constexpr std::size_t kLongestName = 400;
constexpr std::size_t kGroupLength = 200;

/// Reads the texts of one row and keeps the first thing that is wrong.
class FoodRow {
public:
    explicit FoodRow(const CsvReader& reader) : reader_{reader} {}

    std::string text(std::size_t index, const std::string& column, std::size_t most) {
        std::string found = oneLine(reader_.fields()[index]);
        if (!failure && (!isPlainLine(found) || codePoints(found) > most))
            failure = reader_.errorHere(ErrorCode::FoodTextNotClean)
                          .with("found", found)
                          .with("column", column)
                          .with("most", std::to_string(most));
        return found;
    }
    std::string needed(std::size_t index, const std::string& column, std::size_t most,
                       ErrorCode missing) {
        std::string found = text(index, column, most);
        if (!failure && found.empty()) failure = reader_.errorHere(missing).with("column", column);
        return found;
    }

    std::optional<Error> failure;

private:
    const CsvReader& reader_;
};

}  // namespace

std::vector<std::string> namesIn(std::string_view text) {
    std::vector<std::string> names;
    while (!text.empty()) {
        const std::size_t end = text.find_first_of(",;");
        std::string name = oneLine(text.substr(0, end));
        const bool shown = !name.empty() && isPlainLine(name) && codePoints(name) <= kLongestName;
        if (shown && std::ranges::find(names, name) == names.end())
            names.push_back(std::move(name));
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return names;
}

Result<CsvFood> readCsvFood(const CsvReader& reader, const CsvColumns& columns,
                            const CsvMapping& mapping) {
    if (const auto fault = reader.fault()) return fail(reader.errorHere(*fault));
    if (reader.fields().size() != columns.count)
        return fail(reader.errorHere(ErrorCode::FieldsDiffer)
                        .with("found", std::to_string(reader.fields().size()))
                        .with("known", std::to_string(columns.count)));
    FoodRow row{reader};
    CsvFood food;
    food.number = row.needed(columns.number, mapping.numberColumn, kNumberLength,
                             ErrorCode::FoodNumberMissing);
    food.name =
        row.needed(columns.name, mapping.nameColumn, kLongestName, ErrorCode::FoodNameMissing);
    if (columns.group) {
        food.group = row.text(*columns.group, mapping.groupColumn, kGroupLength);
        if (isMissingMark(food.group, mapping)) food.group.clear();
    }
    if (row.failure) return fail(*row.failure);
    if (columns.otherNames) food.otherNames = namesIn(reader.fields()[*columns.otherNames]);
    return food;
}

}  // namespace nettare
