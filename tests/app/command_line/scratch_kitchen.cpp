#include "command_line/scratch_kitchen.h"

#include <cstdlib>
#include <sstream>
#include <stdexcept>

#include "app/command_line/run.h"
#include "support/scratch_folder.h"

using nettare::bytesOf;

Outcome run(const std::vector<std::string>& arguments) {
    std::ostringstream out;
    std::ostringstream err;
    const int code = nettare::runCommandLine(arguments, out, err);
    return {code, out.str(), err.str()};
}

std::string skewers() {
    return bytesOf(NETTARE_RESOURCES "/demo/prawn-fennel-skewers.json");
}

std::string patties() {
    return bytesOf(NETTARE_RESOURCES "/demo/barley-beetroot-patties.json");
}

ScratchKitchen::ScratchKitchen() : before_{std::filesystem::current_path()} {
    std::string name = (std::filesystem::temp_directory_path() / "nettare_test_XXXXXX").string();
    if (mkdtemp(name.data()) == nullptr) throw std::runtime_error("no scratch folder");
    folder_ = name;
    std::filesystem::current_path(folder_);
}

ScratchKitchen::~ScratchKitchen() {
    std::error_code ignored;
    std::filesystem::current_path(before_, ignored);
    std::filesystem::remove_all(folder_, ignored);
}

void ScratchKitchen::write(const std::string& name, std::string_view bytes) const {
    std::ofstream{folder_ / name, std::ios::binary} << bytes;
}

ShareFolder::ShareFolder(const std::string& folder) {
    setenv("NETTARE_SHARE", folder.c_str(), 1);
}

ShareFolder::~ShareFolder() {
    unsetenv("NETTARE_SHARE");
}
