#include "core/support/sha256.h"

#include <catch2/catch.hpp>

using namespace nettare;

// The examples of NIST for FIPS 180-4 (SHA256.pdf), from memory and checked with sha256sum.
TEST_CASE("the hash of a text is the one that NIST publishes", "[support]") {
    CHECK(sha256("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(sha256("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    CHECK(sha256(std::string(1'000'000, 'a')) ==
          "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST_CASE("a byte of zero counts like any other byte", "[support]") {
    CHECK(sha256(std::string_view{"a\0b", 3}) != sha256("a"));
    CHECK(sha256(std::string_view{"\0", 1}) ==
          "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d");
}

TEST_CASE("bytes that come in pieces have the hash of the whole", "[support]") {
    Sha256 hash;
    CHECK(hash.hex() == sha256(""));
    hash.add("a");
    hash.add("");
    CHECK(hash.hex() == sha256("a"));
    hash.add("bc");
    CHECK(hash.hex() == sha256("abc"));
}
