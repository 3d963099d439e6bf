#include "db/kitchen/uuid.h"

#include <sqlite3.h>

#include <string_view>

namespace nettare {

std::string uuidOf(UuidBytes bytes) {
    bytes[6] = static_cast<unsigned char>((bytes[6] & 0x0FU) | 0x40U);
    bytes[8] = static_cast<unsigned char>((bytes[8] & 0x3FU) | 0x80U);
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        if (i == 4 || i == 6 || i == 8 || i == 10) text += '-';
        text += kDigits[bytes[i] >> 4U];
        text += kDigits[bytes[i] & 0x0FU];
    }
    return text;
}

std::string newUuid() {
    UuidBytes bytes{};
    sqlite3_randomness(static_cast<int>(bytes.size()), bytes.data());
    return uuidOf(bytes);
}

}  // namespace nettare
