#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "db/import/import_files.h"
#include "db/import/import_run.h"
#include "db/import/table_writer.h"

namespace nettare {

/// What the small files of the Standard Reference say, by the publisher's codes.
struct Sr28Codes {
    /// A nutrient of NUTR_DEF.
    struct Nutrient {
        int component = 0;       ///< id in the table file
        double factor = 1;       ///< from the publisher's unit to ours
        bool isOurs = false;     ///< one of Component
        std::size_t values = 0;  ///< taken so far
    };

    std::map<std::string, int, std::less<>> groups, sources, derivations;
    std::map<std::string, Nutrient, std::less<>> nutrients;
    std::vector<std::string> names;  ///< of the foods, by id
};

/// What an import of the Standard Reference works with.
struct Sr28Import {
    const ImportFiles& files;
    ImportRun& run;
    TableWriter& writer;
    Sr28Codes codes;
};

// One function per file of the release; each is told in import.writer. Fail: ImportStopped,
// NotPublished, and as ImportFiles::read().

/// FD_GROUP, SRC_CD, DERIV_CD.
[[nodiscard]] Result<void> readSr28Codes(Sr28Import& import);
/// NUTR_DEF. Fails also: UnitUnconvertible.
[[nodiscard]] Result<void> readSr28Nutrients(Sr28Import& import);
/// FOOD_DES.
[[nodiscard]] Result<void> readSr28Foods(Sr28Import& import);
/// NUT_DATA.
[[nodiscard]] Result<void> readSr28Values(Sr28Import& import);
/// WEIGHT.
[[nodiscard]] Result<void> readSr28Measures(Sr28Import& import);

}  // namespace nettare
