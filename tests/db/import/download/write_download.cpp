#include <charconv>
#include <cstdio>
#include <string_view>

#include "import/download/fdc_download.h"

namespace {

std::size_t countOf(std::string_view text) {
    std::size_t count = 0;
    std::from_chars(text.data(), text.data() + text.size(), count);
    return count;
}

}  // namespace

// write_download FOLDER FOODS VALUES: writes a generated download like FoodData Central's.
int main(int count, char** arguments) {
    if (count != 4) return 2;
    const nettare::DownloadSize size{countOf(arguments[2]), countOf(arguments[3])};
    if (size.foods == 0) return 2;
    if (nettare::writeFdcDownload(arguments[1], size)) return 0;
    std::fputs("the files cannot be written\n", stderr);
    return 1;
}
