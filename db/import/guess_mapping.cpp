#include <algorithm>
#include <filesystem>

#include "core/support/text.h"
#include "db/import/csv_mapping.h"
#include "db/import/guess_header.h"
#include "db/import/one_line.h"
#include "db/import/scaled_number.h"

namespace nettare {

namespace {

using Rows = std::vector<std::vector<std::string>>;

constexpr int kRowsLookedAt = 20;

/// Columns that a separator makes, where all rows have as many; one where they do not.
std::size_t columnsOf(const Rows& rows) {
    const std::size_t columns = rows.front().size();
    const bool even = std::ranges::all_of(
        rows, [&](const std::vector<std::string>& row) { return row.size() == columns; });
    return even ? columns : 1;
}

bool isYear(std::string_view word) {
    return word.size() == 4 && (word.starts_with("19") || word.starts_with("20")) &&
           word.find_first_not_of("0123456789") == std::string_view::npos;
}

/// "ifct_2017.csv" is the table "ifct" in its release "2017".
void nameByFile(CsvMapping& mapping, const std::string& path) {
    std::string stem = lowerAscii(std::filesystem::path{path}.stem().string());
    const auto odd = [](char c) { return !(c >= 'a' && c <= 'z') && !(c >= '0' && c <= '9'); };
    std::ranges::replace_if(stem, odd, ' ');
    for (const std::string_view word : words(stem)) {
        if (isYear(word) && mapping.release.empty()) {
            mapping.release = word;
            continue;
        }
        if (!mapping.table.empty()) mapping.table += '-';
        mapping.table += word;
    }
    if (mapping.table.empty()) mapping.table = "table";
    mapping.table.resize(std::min<std::size_t>(mapping.table.size(), 64));
}

/// The first column of a kind keeps it.
void takeFoodColumn(CsvMapping& mapping, FoodColumn kind, const std::string& header) {
    const auto take = [&](std::string& into) {
        if (into.empty()) into = header;
    };
    switch (kind) {
        case FoodColumn::Number:
            return take(mapping.numberColumn);
        case FoodColumn::Name:
            return take(mapping.nameColumn);
        case FoodColumn::Group:
            return take(mapping.groupColumn);
        case FoodColumn::OtherNames:
            return take(mapping.otherNamesColumn);
        case FoodColumn::Refuse:
            return take(mapping.refuseColumn);
    }
}

void guessColumns(CsvMapping& mapping, const std::vector<std::string>& headers) {
    for (const std::string& field : headers) {
        const std::string header = oneLine(field);
        // A header that stands twice cannot be named.
        const auto same = [&](const std::string& other) { return oneLine(other) == header; };
        if (std::ranges::count_if(headers, same) > 1) continue;
        if (const auto kind = guessFoodColumn(header)) {
            takeFoodColumn(mapping, *kind, header);
            continue;
        }
        const auto guess = guessHeader(header);
        if (!guess) continue;
        const auto taken =
            std::ranges::count(mapping.components, guess->component, &MappedComponent::component);
        if (taken == 0) mapping.components.push_back({header, guess->component, guess->unit});
    }
}

/// A comma where cells of the mapped columns are numbers with it, and more than are with a point.
char guessDecimalSign(const CsvMapping& mapping, const Rows& rows) {
    int points = 0;
    int commas = 0;
    for (std::size_t column = 0; column < rows.front().size(); ++column) {
        const std::string header = oneLine(rows.front()[column]);
        if (std::ranges::count(mapping.components, header, &MappedComponent::column) == 0) continue;
        for (std::size_t row = 1; row < rows.size(); ++row) {
            const std::string_view cell = trimmed(rows[row][column]);
            if (cell.find('.') != std::string_view::npos) points += readScaledNumber(cell) ? 1 : 0;
            if (cell.find(',') != std::string_view::npos)
                commas += readScaledNumber(cell, ',') ? 1 : 0;
        }
    }
    return commas > points ? ',' : '.';
}

}  // namespace

Result<CsvMapping> guessCsvMapping(const std::string& path) {
    CsvMapping mapping;
    Rows best;
    for (const char separator : {',', ';', '\t'}) {
        auto rows = csvPreview(path, separator, kRowsLookedAt);
        if (!rows) {
            // Text behind a quote may only mean that this is not the separator.
            if (rows.error().code == ErrorCode::CsvTextAfterQuote && separator != '\t') continue;
            if (best.empty()) return fail(rows.error());
            continue;
        }
        if (!best.empty() && columnsOf(*rows) <= columnsOf(best)) continue;
        best = std::move(*rows);
        mapping.separator = separator;
    }
    nameByFile(mapping, path);
    guessColumns(mapping, best.front());
    if (columnsOf(best) > 1) mapping.decimalSign = guessDecimalSign(mapping, best);
    return mapping;
}

}  // namespace nettare
