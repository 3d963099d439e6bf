#include "without_rights.h"

#include <sys/stat.h>
#include <unistd.h>

#include <catch2/catch.hpp>

namespace {

constexpr uid_t kNobody = 65534;

}  // namespace

WithoutRights::WithoutRights(std::string folder) : folder_{std::move(folder)} {
    REQUIRE(::chmod(folder_.c_str(), 0555) == 0);
    if (::getuid() == 0) REQUIRE(::seteuid(kNobody) == 0);
}

WithoutRights::~WithoutRights() {
    if (::getuid() == 0) CHECK(::seteuid(0) == 0);
    CHECK(::chmod(folder_.c_str(), 0755) == 0);
}
