#include "layering/header_rules.h"

#include <algorithm>
#include <fstream>

namespace nettare {

namespace {

std::string firstLineWith(const std::filesystem::path& file, const std::string& beginning) {
    std::ifstream source{file};
    for (std::string line; std::getline(source, line);)
        if (line.starts_with(beginning)) return line;
    return {};
}

std::string faultOf(const std::filesystem::path& root, const std::filesystem::path& file) {
    const std::string name = file.lexically_relative(root).generic_string();
    if (file.extension() == ".h") {
        if (firstLineWith(file, "#") == "#pragma once") return {};
        return name + " does not begin with #pragma once.";
    }
    const std::filesystem::path header = std::filesystem::path{file}.replace_extension(".h");
    if (file.extension() != ".cpp" || !std::filesystem::exists(header)) return {};
    const std::string own = header.lexically_relative(root).generic_string();
    if (firstLineWith(file, "#include") == "#include \"" + own + "\"") return {};
    return name + " does not include " + own + " before all else.";
}

}  // namespace

std::vector<std::string> headersNotAlone(const std::filesystem::path& root) {
    std::vector<std::string> found;
    for (const char* layer : {"core", "db", "app"}) {
        if (!std::filesystem::is_directory(root / layer)) continue;
        for (const auto& entry : std::filesystem::recursive_directory_iterator{root / layer}) {
            std::string fault = faultOf(root, entry.path());
            if (!fault.empty()) found.push_back(std::move(fault));
        }
    }
    std::ranges::sort(found);
    return found;
}

}  // namespace nettare
