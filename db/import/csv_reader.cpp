#include "db/import/csv_reader.h"

#include <algorithm>
#include <cerrno>
#include <cstdint>
#include <cstdio>
#include <cstring>
#include <memory>
#include <utility>

#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kFirstBlock = std::size_t{1} << 18U;
constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

/// Most rows are ASCII, and eight of their bytes are looked at together.
bool isUtf8(std::string_view bytes) {
    constexpr std::uint64_t kHighBits = 0x8080808080808080U;
    std::size_t at = 0;
    for (; at + sizeof(std::uint64_t) <= bytes.size(); at += sizeof(std::uint64_t)) {
        std::uint64_t eight = 0;
        std::memcpy(&eight, bytes.data() + at, sizeof eight);
        if ((eight & kHighBits) != 0) break;
    }
    bytes.remove_prefix(at);
    return utf8Prefix(bytes) == bytes.size();
}

}  // namespace

Result<ReadBytes> bytesOfFile(const std::string& path) {
    const auto close = [](std::FILE* opened) {
        if (opened != nullptr) std::fclose(opened);
    };
    const std::shared_ptr<std::FILE> file{std::fopen(path.c_str(), "rb"), close};
    const auto unreadable = [path] {
        Error error = Error{ErrorCode::FileNotReadable}.with("reason", std::strerror(errno));
        error.file = path;
        return fail(error);
    };
    if (file == nullptr) return unreadable();
    return [file, unreadable](std::span<char> into) -> Result<std::size_t> {
        const std::size_t count = std::fread(into.data(), 1, into.size(), file.get());
        if (count == 0 && std::ferror(file.get()) != 0) return unreadable();
        return count;
    };
}

CsvReader::CsvReader(ReadBytes read, std::string file, char separator)
    : read_{std::move(read)}, file_{std::move(file)}, separator_{separator} {
    block_.resize(kFirstBlock);
}

Error CsvReader::errorHere(ErrorCode code) const {
    Error error{code};
    error.file = file_;
    error.line = line_;
    return error;
}

/// Moves what is not read yet to the front and reads more behind it; the block grows where a row
/// fills it. False where a row is longer than one may be.
Result<bool> CsvReader::fill() {
    std::memmove(block_.data(), block_.data() + begin_, end_ - begin_);
    passed_ += begin_;
    end_ -= begin_;
    begin_ = 0;
    if (end_ == block_.size()) {
        if (block_.size() >= kLongestCsvRow) return false;
        block_.resize(block_.size() * 2);
    }
    const bool first = passed_ == 0 && end_ == 0;
    do {
        const auto count = read_(std::span{block_}.subspan(end_));
        if (!count) return fail(count.error());
        if (*count == 0) atEnd_ = true;
        end_ += *count;
    } while (first && !atEnd_ && end_ < kByteOrderMark.size());
    if (first && std::string_view{block_.data(), end_}.starts_with(kByteOrderMark))
        begin_ = kByteOrderMark.size();
    return true;
}

/// Passes a quoted field from its opening quote to after its closing one.
CsvReader::Scan CsvReader::scanQuoted(std::size_t& at) {
    const std::size_t fieldBegin = ++at;
    bool doubled = false;
    while (true) {
        const void* found = std::memchr(block_.data() + at, '"', end_ - at);
        if (found == nullptr) return atEnd_ ? Scan::QuoteOpen : Scan::MoreNeeded;
        const auto quote =
            static_cast<std::size_t>(static_cast<const char*>(found) - block_.data());
        if (quote + 1 == end_ && !atEnd_) return Scan::MoreNeeded;
        at = quote + 1;
        if (at == end_ || block_[at] != '"') {
            rowLines_ += static_cast<int>(
                std::count(block_.data() + fieldBegin, block_.data() + quote, '\n'));
            extents_.push_back({fieldBegin, quote, doubled});
            return Scan::Whole;
        }
        doubled = true;
        ++at;
    }
}

/// Passes an unquoted field up to what ends it.
void CsvReader::scanPlain(std::size_t& at, std::size_t fieldBegin) {
    const char* bytes = block_.data();
    while (at != end_ && bytes[at] != separator_ && bytes[at] != '\n') ++at;
    extents_.push_back({fieldBegin, at, false});
}

/// A CR before the LF, or before the end of the file, belongs to the end of the row.
void CsvReader::dropReturnAtEnd() {
    Extent& last = extents_.back();
    if (last.end > last.begin && block_[last.end - 1] == '\r') --last.end;
}

CsvReader::Scan CsvReader::scanRow() {
    extents_.clear();
    rowLines_ = 1;
    fault_.reset();
    for (std::size_t at = begin_;; ++at) {
        if (at == end_ && !atEnd_) return Scan::MoreNeeded;
        const bool quoted = at != end_ && block_[at] == '"';
        if (quoted) {
            if (const Scan scan = scanQuoted(at); scan != Scan::Whole) return scan;
            if (at == end_ && !atEnd_) return Scan::MoreNeeded;
            const bool returns = at != end_ && block_[at] == '\r';
            if (returns && at + 1 == end_ && !atEnd_) return Scan::MoreNeeded;
            if (returns && (at + 1 == end_ || block_[at + 1] == '\n')) ++at;
            if (at != end_ && block_[at] != separator_ && block_[at] != '\n') {
                fault_ = ErrorCode::CsvTextAfterQuote;
                scanPlain(at, at);
            }
        } else {
            scanPlain(at, at);
        }
        if (at == end_ && !atEnd_) return Scan::MoreNeeded;
        if (at == end_ || block_[at] == '\n') {
            if (!quoted) dropReturnAtEnd();
            rowEnd_ = at == end_ ? at : at + 1;
            return Scan::Whole;
        }
    }
}

/// Undoubles the quotes in place and hands out views.
void CsvReader::takeFields() {
    fields_.clear();
    for (const Extent& extent : extents_) {
        char* const begin = block_.data() + extent.begin;
        char* end = block_.data() + extent.end;
        if (extent.doubled) {
            char* into = begin;
            for (const char* from = begin; from != end; ++from, ++into) {
                *into = *from;
                if (*from == '"') ++from;
            }
            end = into;
        }
        fields_.emplace_back(begin, static_cast<std::size_t>(end - begin));
    }
}

Result<bool> CsvReader::next() {
    while (true) {
        line_ = nextLine_;
        if (begin_ == end_ && atEnd_) return false;
        const Scan scan = scanRow();
        if (scan == Scan::QuoteOpen) return fail(errorHere(ErrorCode::CsvQuoteOpen));
        if (scan == Scan::MoreNeeded) {
            const auto filled = fill();
            if (!filled) return fail(filled.error());
            if (!*filled)
                return fail(errorHere(ErrorCode::CsvLineTooLong)
                                .with("most", std::to_string(kLongestCsvRow >> 20U)));
            continue;
        }
        const bool blank =
            extents_.size() == 1 && extents_[0].begin == extents_[0].end && block_[begin_] != '"';
        if (!blank) {
            if (!isUtf8({block_.data() + begin_, rowEnd_ - begin_})) fault_ = ErrorCode::CsvNotUtf8;
            takeFields();
        }
        begin_ = rowEnd_;
        nextLine_ += rowLines_;
        if (!blank) return true;
    }
}

}  // namespace nettare
