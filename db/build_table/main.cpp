#include <fmt/core.h>

#include <cstdio>

#include "db/build_table/build_sentence.h"
#include "db/build_table/build_table.h"

/// nettare_build_table FOLDER FILE: 0 when the file is there, 1 when something is wrong with the
/// folder or the disk (a sentence on standard error says what), 2 for a wrong call.
int main(int count, char** arguments) {
    if (count != 3) {
        fmt::print(stderr, "Usage: nettare_build_table FOLDER FILE\n");
        return 2;
    }
    const auto built = nettare::buildTable(arguments[1], arguments[2]);
    if (built) return 0;
    fmt::print(stderr, "{}\n", nettare::buildSentence(built.error()));
    return 1;
}
