#include <array>

#include "db/import/import_parts.h"
#include "db/import/sr28_parts.h"

namespace nettare {

namespace {

constexpr std::array<std::string_view, 7> kSr28Files{"FD_GROUP.txt", "SRC_CD.txt",   "DERIV_CD.txt",
                                                     "NUTR_DEF.txt", "FOOD_DES.txt", "NUT_DATA.txt",
                                                     "WEIGHT.txt"};

TableTarget targetOf(const ImportRequest& request) {
    return {.table = "usda-sr",
            .release = "28",
            .citation =
                "US Department of Agriculture, Agricultural Research Service, Nutrient "
                "Data Laboratory. USDA National Nutrient Database for Standard Reference, "
                "Release 28. Version current: September 2015.",
            .folder = request.folder,
            .dryRun = request.dryRun};
}

Result<void> readAll(Sr28Import& import) {
    using Read = Result<void> (*)(Sr28Import&);
    constexpr std::array<Read, 5> kReads{readSr28Codes, readSr28Nutrients, readSr28Foods,
                                         readSr28Values, readSr28Measures};
    for (const Read read : kReads) {
        if (auto done = read(import); !done) return done;
        if (const auto& failure = import.writer.failure()) return fail(*failure);
    }
    return {};
}

}  // namespace

Result<ImportReport> importSr28(const ImportRequest& request, const TellImport& tell) {
    const auto files = ImportFiles::open(request.path);
    if (!files) return fail(files.error());
    std::size_t bytesInAll = 0;
    for (const std::string_view name : kSr28Files) {
        // Looked for before anything is written: a folder of something else fails at once.
        if (const auto stream = files->read(name); !stream) return fail(stream.error());
        bytesInAll += files->size(name);
    }
    const TableTarget target = targetOf(request);
    auto writer = TableWriter::begin(target);
    if (!writer) return fail(writer.error());
    ImportRun run{request, tell, bytesInAll};
    Sr28Import import{.files = *files, .run = run, .writer = *writer, .codes = {}};
    if (const auto read = readAll(import); !read) return fail(read.error());
    return run.finish(*writer, target);
}

}  // namespace nettare
