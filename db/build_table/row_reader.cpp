#include "db/build_table/row_reader.h"

#include "core/quantity/decimal.h"

namespace nettare {

namespace {

constexpr std::string_view kMissing = "-";

}  // namespace

const std::string& RowReader::field() {
    return row_->fields[next_++];
}

void RowReader::refuse(ErrorCode code) {
    if (error_) return;
    const std::size_t last = next_ == 0 ? 0 : next_ - 1;
    Error error =
        Error{code}.with("column", table_->columns[last]).with("found", row_->fields[last]);
    error.file = table_->file;
    error.line = row_->line;
    error_ = error;
}

std::string RowReader::text() {
    const std::string& found = field();
    if (found.empty()) refuse(ErrorCode::EmptyText);
    return found == kMissing ? std::string{} : found;
}

std::string RowReader::requiredText() {
    std::string found = text();
    if (found.empty()) refuse(ErrorCode::EmptyText);
    return found;
}

std::optional<double> RowReader::number() {
    const std::string found = text();
    if (found.empty()) return std::nullopt;
    const auto decimal = Decimal::read(found);
    if (!decimal) refuse(ErrorCode::NotADecimal);
    if (decimal && *decimal < Decimal{}) refuse(ErrorCode::OutOfRange);
    return decimal ? std::optional{decimal->value()} : std::nullopt;
}

double RowReader::positiveNumber() {
    const std::optional<double> found = number();
    if (!found) refuse(ErrorCode::EmptyText);
    if (found && *found <= 0) refuse(ErrorCode::NotPositive);
    return found.value_or(1);
}

int RowReader::count() {
    const std::string found = text();
    if (found.empty()) return 0;
    const auto decimal = Decimal::read(found);
    if (!decimal || decimal->decimals() > 0) {
        refuse(ErrorCode::NotADecimal);
        return 0;
    }
    if (*decimal < Decimal{1, 0} || *decimal > Decimal{1000000, 0}) refuse(ErrorCode::OutOfRange);
    return static_cast<int>(decimal->value());
}

}  // namespace nettare
