#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "db/build_table/text_table.h"

namespace nettare {

/// Reads the fields of one row from left to right. "-" is missing. The first thing that is wrong is
/// kept as the error, with file, line and the value "column"; what is read after it means nothing.
class RowReader {
public:
    RowReader(const TextTable& table, const TextRow& row) : table_{&table}, row_{&row} {}

    /// The field, empty where it is missing.
    std::string text();
    /// The field, which must be there: EmptyText.
    std::string requiredText();
    /// A decimal >= 0, or nothing where it is missing: NotADecimal, OutOfRange.
    std::optional<double> number();
    /// A decimal > 0: EmptyText, NotADecimal, NotPositive.
    double positiveNumber();
    /// A whole number > 0, or 0 where it is missing: NotADecimal, OutOfRange.
    int count();

    /// Notes an error at the field read last.
    void refuse(ErrorCode code);
    [[nodiscard]] bool good() const { return !error_; }
    [[nodiscard]] const Error& error() const { return *error_; }

private:
    const std::string& field();

    const TextTable* table_;
    const TextRow* row_;
    std::size_t next_ = 0;
    std::optional<Error> error_;
};

}  // namespace nettare
