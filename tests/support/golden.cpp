#include "golden.h"

#include <cstdlib>
#include <fstream>
#include <string_view>

#include <catch2/catch.hpp>

#include "json_edit.h"

namespace nettare {

void checkGolden(const std::string& name, const std::string& text) {
    const std::string path = std::string{NETTARE_TEST_DATA} + "/golden/" + name;
    const char* update = std::getenv("UPDATE_GOLDEN");
    if (update != nullptr && std::string_view{update} == "1") {
        std::ofstream{path, std::ios::binary} << text;
        WARN(path << " was written anew; read the difference.");
    }
    CHECK(text == fileText(path));
}

}  // namespace nettare
