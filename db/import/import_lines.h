#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "db/import/import_files.h"

namespace nettare {

/// The lines of a file, without their CR LF or LF. The last one needs no end.
class ImportLines {
public:
    explicit ImportLines(ImportStream& stream) : stream_{&stream} {}

    /// The next line, good until the next call; nothing at the end. Fails: as ImportStream::next(),
    /// and NotPublished for a line of more than a MiB, which no table has.
    [[nodiscard]] Result<std::optional<std::string_view>> next();
    /// Of the line that next() gave, from 1 on.
    [[nodiscard]] int line() const { return line_; }

private:
    [[nodiscard]] Result<bool> fetch();

    ImportStream* stream_;
    std::string carried_;    ///< the start of a line that goes on in the next block
    std::string_view rest_;  ///< of the block
    int line_ = 0;
    bool givesCarried_ = false;
};

}  // namespace nettare
