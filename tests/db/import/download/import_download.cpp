#include <cstdio>

#include "db/import/import_parts.h"

// import_download FOLDER TABLES: imports a download like FoodData Central's into a table file.
int main(int count, char** arguments) {
    if (count != 3) return 2;
    nettare::ImportRequest request;
    request.kind = nettare::ImportKind::Fdc;
    request.path = arguments[1];
    request.folder = arguments[2];
    const auto report = nettare::importFdc(request, {});
    if (!report) {
        std::fprintf(stderr, "error %d in %s, line %d\n", static_cast<int>(report.error().code),
                     report.error().file.c_str(), report.error().line);
        return 1;
    }
    std::printf("%zu foods, %zu values, %zu measures, %zu rejected\n", report->foods,
                report->values, report->measures, report->rejected);
    return 0;
}
