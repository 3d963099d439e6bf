#include "core/support/sha256.h"

#include <openssl/evp.h>

#include <array>
#include <cstdlib>
#include <memory>

namespace nettare {

namespace {

using Digest = std::array<unsigned char, 32>;

/// Fails only where memory is out or the library is broken: nothing could be defended then.
void need(bool done) {
    if (!done) std::abort();
}

std::string hexOf(const Digest& digest) {
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    text.reserve(2 * digest.size());
    for (const unsigned char byte : digest) {
        text += kDigits[byte >> 4U];
        text += kDigits[byte & 0x0FU];
    }
    return text;
}

using Context = std::unique_ptr<EVP_MD_CTX, decltype(&EVP_MD_CTX_free)>;

Context newContext() {
    return {EVP_MD_CTX_new(), &EVP_MD_CTX_free};
}

}  // namespace

bool isSha256(std::string_view text) {
    return text.size() == 64 &&
           text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

std::string sha256(std::string_view bytes) {
    Digest digest{};
    unsigned int length = 0;
    const int done =
        EVP_Digest(bytes.data(), bytes.size(), digest.data(), &length, EVP_sha256(), nullptr);
    need(done == 1 && length == digest.size());
    return hexOf(digest);
}

// None of its parts is of a type of the anonymous namespace: unity files include this file.
struct Sha256::State {
    Context context = newContext();
};

Sha256::Sha256() : state_{std::make_unique<State>()} {
    need(state_->context && EVP_DigestInit_ex(state_->context.get(), EVP_sha256(), nullptr) == 1);
}
Sha256::Sha256(Sha256&&) noexcept = default;
Sha256& Sha256::operator=(Sha256&&) noexcept = default;
Sha256::~Sha256() = default;

void Sha256::add(std::string_view bytes) {
    need(EVP_DigestUpdate(state_->context.get(), bytes.data(), bytes.size()) == 1);
}

std::string Sha256::hex() const {
    const Context copy = newContext();
    Digest digest{};
    unsigned int length = 0;
    need(copy && EVP_MD_CTX_copy_ex(copy.get(), state_->context.get()) == 1 &&
         EVP_DigestFinal_ex(copy.get(), digest.data(), &length) == 1 && length == digest.size());
    return hexOf(digest);
}

}  // namespace nettare
