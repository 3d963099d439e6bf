#include <cstdio>

#include "db/import/import_table.h"

/// import_once ZIP FOLDER: imports the Standard Reference, and says how many foods the table has.
/// Says "begun" when the first bytes are read, so that a test can kill it at its work.
int main(int count, char** arguments) {
    if (count != 3) return 2;
    bool begun = false;
    const auto tell = [&](const nettare::ImportProgress& /*progress*/) {
        if (!begun) std::puts("begun");
        begun = true;
        std::fflush(stdout);
        return true;
    };
    nettare::ImportRequest request;
    request.path = arguments[1];
    request.folder = arguments[2];
    const auto report = nettare::importTable(request, tell);
    if (!report) {
        std::fprintf(stderr, "error %d in %s\n", static_cast<int>(report.error().code),
                     report.error().file.c_str());
        return 1;
    }
    std::printf("%zu foods, %zu values, %zu measures, %zu rejected\n", report->foods,
                report->values, report->measures, report->rejected);
    return 0;
}
