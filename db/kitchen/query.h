#pragma once

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace nettare {

/// One use of a prepared statement: values are bound from the left, rows are read one by one, and
/// at the end the statement is ready for the next use.
class Query {
public:
    explicit Query(SQLite::Statement& statement) : statement_{statement} {}
    ~Query() {
        statement_.tryReset();
        statement_.clearBindings();
    }
    Query(const Query&) = delete;
    Query& operator=(const Query&) = delete;

    Query& with(const std::string& text) {
        statement_.bind(++bound_, text);
        return *this;
    }
    /// The bytes must live until the query ends.
    Query& withBytes(std::string_view bytes) {
        statement_.bindNoCopy(++bound_, bytes.data(), static_cast<int>(bytes.size()));
        return *this;
    }
    Query& with(std::int64_t number) {
        statement_.bind(++bound_, number);
        return *this;
    }
    Query& with(std::optional<int> number) {
        if (number)
            statement_.bind(++bound_, *number);
        else
            statement_.bind(++bound_);
        return *this;
    }

    /// Steps to the next row; false where there is none.
    [[nodiscard]] bool next() { return statement_.executeStep(); }
    /// Runs a statement that has no rows.
    void run() {
        while (statement_.executeStep()) {
        }
    }

    /// The text there, or the bytes.
    [[nodiscard]] std::string text(int column) { return statement_.getColumn(column).getString(); }
    /// The same without a copy, until the next step.
    [[nodiscard]] std::string_view view(int column) {
        const SQLite::Column value = statement_.getColumn(column);
        const auto* bytes = static_cast<const char*>(value.getBlob());
        return {bytes, static_cast<std::size_t>(value.getBytes())};
    }
    [[nodiscard]] std::int64_t number(int column) {
        return statement_.getColumn(column).getInt64();
    }
    [[nodiscard]] std::optional<int> optionalNumber(int column) {
        const SQLite::Column value = statement_.getColumn(column);
        if (value.isNull()) return std::nullopt;
        return value.getInt();
    }

private:
    SQLite::Statement& statement_;
    int bound_ = 0;
};

}  // namespace nettare
