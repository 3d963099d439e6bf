#pragma once

#include <memory>
#include <string>
#include <string_view>

namespace nettare {

/// SHA-256 (FIPS 180-4) of the bytes, as 64 lower-case hexadecimal digits.
[[nodiscard]] std::string sha256(std::string_view bytes);

/// Whether the text has the form of such a hash.
[[nodiscard]] bool isSha256(std::string_view text);

/// The same of bytes that come in pieces.
class Sha256 {
public:
    Sha256();
    Sha256(Sha256&&) noexcept;
    Sha256& operator=(Sha256&&) noexcept;
    ~Sha256();

    void add(std::string_view bytes);
    /// Of all bytes added so far.
    [[nodiscard]] std::string hex() const;

private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace nettare
