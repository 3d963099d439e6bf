#include "core/support/sha256.h"

#include <openssl/evp.h>

#include <array>
#include <cstdlib>

namespace nettare {

std::string sha256(std::string_view bytes) {
    std::array<unsigned char, 32> digest{};
    unsigned int length = 0;
    // Fails only where memory is out or the library is broken: nothing could be defended then.
    const int done =
        EVP_Digest(bytes.data(), bytes.size(), digest.data(), &length, EVP_sha256(), nullptr);
    if (done != 1 || length != digest.size()) std::abort();
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    text.reserve(2 * digest.size());
    for (const unsigned char byte : digest) {
        text += kDigits[byte >> 4U];
        text += kDigits[byte & 0x0FU];
    }
    return text;
}

}  // namespace nettare
