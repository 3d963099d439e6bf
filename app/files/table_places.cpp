#include "app/files/table_places.h"

#include <cstdlib>

#include "app/files/share_folder.h"

namespace nettare {

namespace {

/// A variable of the environment; empty where it is not set.
std::string variable(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? std::string{} : std::string{value};
}

std::string importFolder() {
    if (auto set = variable("NETTARE_TABLES"); !set.empty()) return set;
    std::string data = variable("XDG_DATA_HOME");
    if (data.empty() && !variable("HOME").empty()) data = variable("HOME") + "/.local/share";
    return data.empty() ? data : data + "/nettare/tables";
}

}  // namespace

TablePlaces tablePlaces() {
    return {shareFolder() + "/starter.table", importFolder()};
}

}  // namespace nettare
