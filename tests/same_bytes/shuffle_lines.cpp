#include <charconv>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>
#include <string_view>

#include "core/support/json.h"
#include "shuffled_lines.h"

// shuffle_lines DOCUMENT SEED: writes the recipe document with its lines in another order.
int main(int argc, char** argv) {
    if (argc != 3) return 2;
    const std::string_view number{argv[2]};
    std::uint32_t seed = 0;
    if (std::from_chars(number.data(), number.data() + number.size(), seed).ec != std::errc{})
        return 2;
    std::ifstream file{argv[1]};
    const std::string text{std::istreambuf_iterator<char>{file}, {}};
    auto document = nettare::parseJson(text);
    if (!document || document->find("lines") == nullptr) return 1;
    std::cout << nettare::writeJsonIndented(nettare::withLinesShuffled(*document, seed));
}
