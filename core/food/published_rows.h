#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/support/result.h"

namespace nettare {

/// One line of a published table that the program carries, and its fields as written. They point
/// into the text.
struct PublishedRow {
    int line = 0;  ///< 1-based
    std::vector<std::string_view> fields;
};

/// The rows of a text whose fields are parted by "|": "#" starts a line of comment, the first other
/// line must be `columns`, and each row has as many fields. WrongFormat otherwise, with the line
/// and the values "expected" and "found".
[[nodiscard]] Result<std::vector<PublishedRow>> publishedRows(std::string_view text,
                                                              std::string_view columns);

/// Reads the fields of a row one after the other, from the left. "-" is a gap: the source has no
/// value. The first field that is not what was asked for is kept as the fault of the row; what is
/// read after it counts for nothing.
class PublishedFields {
public:
    /// The row must outlive it.
    explicit PublishedFields(const PublishedRow& row) : row_{row} {}

    /// Any text, no gap.
    [[nodiscard]] std::string text();
    /// That many digits, no gap.
    [[nodiscard]] std::string digits(std::size_t count);
    [[nodiscard]] std::optional<std::string> digitsOrGap(std::size_t count);
    /// A whole number within the two, no gap.
    [[nodiscard]] int whole(int least, int most);
    [[nodiscard]] std::optional<int> wholeOrGap(int least, int most);
    /// A number in plain decimals within the two, no gap.
    [[nodiscard]] double number(double least, double most);
    [[nodiscard]] std::optional<double> numberOrGap(double least, double most);

    /// Breaks the row by its current field.
    void refuse(std::string_view expected);
    /// WrongFormat with the line and the values "expected" and "found"; nothing while all is well.
    [[nodiscard]] const std::optional<Error>& fault() const { return fault_; }

private:
    [[nodiscard]] std::string_view next();
    [[nodiscard]] bool nextIsGap() const;

    const PublishedRow& row_;
    std::size_t at_ = 0;  ///< fields that were read
    std::optional<Error> fault_;
};

}  // namespace nettare
