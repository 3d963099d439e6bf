#include "db/import/csv_columns.h"

#include <algorithm>

#include "db/import/one_line.h"
#include "db/import/scaled_number.h"

namespace nettare {

namespace {

/// The headers of a file, and the first thing that does not fit them.
class HeaderRow {
public:
    explicit HeaderRow(const CsvReader& reader) : reader_{reader} {
        for (const std::string_view field : reader.fields()) headers_.push_back(oneLine(field));
    }

    std::size_t place(const std::string& column) {
        const auto found = std::ranges::find(headers_, oneLine(column));
        if (found == headers_.end()) {
            Error error = reader_.errorHere(ErrorCode::CsvColumnMissing).with("column", column);
            // Not by with(), which would cut the list.
            error.values.push_back({"known", known()});
            note(error);
            return 0;
        }
        if (std::ranges::count(headers_, *found) > 1)
            note(reader_.errorHere(ErrorCode::CsvColumnTwice).with("column", column));
        return static_cast<std::size_t>(found - headers_.begin());
    }
    std::optional<std::size_t> optionalPlace(const std::string& column) {
        return column.empty() ? std::nullopt : std::optional{place(column)};
    }
    std::optional<Error>& failure() { return failure_; }
    void note(const Error& error) {
        if (!failure_) failure_ = error;
    }

private:
    std::string known() const {
        std::string all;
        for (const std::string& header : headers_) {
            if (header.empty()) continue;
            if (!all.empty()) all += ", ";
            all += header;
        }
        return all;
    }

    const CsvReader& reader_;
    std::vector<std::string> headers_;
    std::optional<Error> failure_;
};

ValueColumn componentColumn(const MappedComponent& mapped, HeaderRow& row,
                            const CsvReader& reader) {
    const ComponentFacts& facts = factsOf(mapped.component);
    ValueColumn column;
    column.index = row.place(mapped.column);
    column.header = mapped.column;
    column.component = mapped.component;
    column.unit = facts.unit;
    const auto power = powerOfTenBetween(mapped.unit, facts.unit);
    if (power) {
        column.powerOfTen = *power;
        return column;
    }
    const ErrorCode code =
        mapped.unit.empty() ? ErrorCode::CsvUnitMissing : ErrorCode::CsvUnitNotFitting;
    row.note(reader.errorHere(code)
                 .with("column", mapped.column)
                 .with("found", mapped.unit)
                 .with("wanted", facts.unit)
                 .with("component", facts.name));
    return column;
}

}  // namespace

Result<CsvColumns> findColumns(const CsvMapping& mapping, const CsvReader& header) {
    HeaderRow row{header};
    CsvColumns columns;
    columns.count = header.fields().size();
    columns.number = row.place(mapping.numberColumn);
    columns.name = row.place(mapping.nameColumn);
    columns.group = row.optionalPlace(mapping.groupColumn);
    columns.otherNames = row.optionalPlace(mapping.otherNamesColumn);
    columns.refuse = row.optionalPlace(mapping.refuseColumn);
    for (const MappedComponent& mapped : mapping.components)
        columns.values.push_back(componentColumn(mapped, row, header));
    for (std::size_t i = 0; i < mapping.others.size(); ++i) {
        const MappedOther& other = mapping.others[i];
        ValueColumn column;
        column.index = row.place(other.column);
        column.header = other.column;
        column.other = i;
        column.unit = other.unit;
        columns.values.push_back(std::move(column));
    }
    if (row.failure()) return fail(*row.failure());
    return columns;
}

}  // namespace nettare
