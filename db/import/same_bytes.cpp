#include "db/import/same_bytes.h"

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <system_error>
#include <vector>

namespace nettare {

bool sameBytes(const std::string& one, const std::string& other) {
    std::error_code absent;
    const auto size = std::filesystem::file_size(one, absent);
    if (absent || std::filesystem::file_size(other, absent) != size || absent) return false;
    std::ifstream a{one, std::ios::binary};
    std::ifstream b{other, std::ios::binary};
    constexpr std::size_t kComparedAtOnce = 1U << 18U;
    std::vector<char> ofA(kComparedAtOnce);
    std::vector<char> ofB(kComparedAtOnce);
    for (auto left = size; left > 0;) {
        const std::size_t next = std::min<std::uintmax_t>(left, kComparedAtOnce);
        if (!a.read(ofA.data(), static_cast<std::streamsize>(next)) ||
            !b.read(ofB.data(), static_cast<std::streamsize>(next)))
            return false;
        if (!std::equal(ofA.begin(), ofA.begin() + static_cast<std::ptrdiff_t>(next), ofB.begin()))
            return false;
        left -= next;
    }
    return true;
}

}  // namespace nettare
