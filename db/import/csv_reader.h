#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/support/result.h"

namespace nettare {

/// Fills the span with the next bytes of a file and answers how many; 0 at its end.
using ReadBytes = std::function<Result<std::size_t>(std::span<char>)>;

/// The bytes of a file on disk from its start. Fails: FileNotReadable (value "reason").
[[nodiscard]] Result<ReadBytes> bytesOfFile(const std::string& path);

/// Reads a CSV row by row (RFC 4180): quoted fields with doubled quotes and line feeds in them,
/// rows ended by LF or CR LF, a byte order mark passed over, blank lines as well. A quote inside an
/// unquoted field is a quote. Holds one block of the file at a time.
class CsvReader {
public:
    /// `file` is what errors name. `read` is asked for blocks of the file in order.
    CsvReader(ReadBytes read, std::string file, char separator);

    /// Reads the next row; false at the end. Fails, with file and line: what `read` fails with,
    /// CsvQuoteOpen, CsvLineTooLong (value "most").
    [[nodiscard]] Result<bool> next();

    /// Of the row read last, until next() is called again. They may be changed in place.
    [[nodiscard]] const std::vector<std::string_view>& fields() const { return fields_; }
    /// The line that the row starts in, from 1.
    [[nodiscard]] int line() const { return line_; }
    /// What is wrong with the row: CsvNotUtf8, CsvTextAfterQuote. Its fields are not to be used.
    [[nodiscard]] std::optional<ErrorCode> fault() const { return fault_; }
    /// Bytes of the file up to the end of the row.
    [[nodiscard]] std::size_t bytesRead() const { return passed_ + begin_; }
    [[nodiscard]] const std::string& file() const { return file_; }
    /// An error at the row read last.
    [[nodiscard]] Error errorHere(ErrorCode code) const;

private:
    struct Extent {
        std::size_t begin, end;
        bool doubled;  ///< holds doubled quotes
    };
    /// Where a scan stopped: at the end of the row, or for want of bytes.
    enum class Scan { Whole, MoreNeeded, QuoteOpen };

    [[nodiscard]] Result<bool> fill();
    [[nodiscard]] Scan scanRow();
    [[nodiscard]] Scan scanQuoted(std::size_t& at);
    void scanPlain(std::size_t& at, std::size_t fieldBegin);
    void takeFields();
    void dropReturnAtEnd();

    ReadBytes read_;
    std::string file_;
    char separator_;
    std::vector<char> block_;
    std::size_t begin_ = 0, end_ = 0;  ///< of the bytes in block_ that are not read yet
    std::size_t passed_ = 0;           ///< bytes of the file before block_
    bool atEnd_ = false;               ///< the file has no more bytes than those in block_
    std::vector<Extent> extents_;
    std::size_t rowEnd_ = 0;
    std::vector<std::string_view> fields_;
    std::optional<ErrorCode> fault_;
    int line_ = 0, nextLine_ = 1, rowLines_ = 0;
};

/// Longest row that is read: 4 MiB. No table of foods has one; an open quote makes one.
inline constexpr std::size_t kLongestCsvRow = std::size_t{4} << 20U;

}  // namespace nettare
