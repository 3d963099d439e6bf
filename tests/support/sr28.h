#pragma once

#include <cstdio>
#include <string_view>

namespace nettare {

/// True where a copy of SR28 is at hand: the zip is then NETTARE_SR28 and the table imported from
/// it NETTARE_SR28_TABLE. Where it is not, ctest shows the test as skipped by what this prints.
[[nodiscard]] inline bool hasSr28() {
    if (!std::string_view{NETTARE_SR28}.empty()) return true;
    std::puts("skipped:no-sr28 (set the CMake variable NETTARE_SR28 to the path of sr28asc.zip)");
    return false;
}

}  // namespace nettare
