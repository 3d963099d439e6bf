#include "support/run_tool.h"

#include <array>
#include <cstdio>

#include <sys/wait.h>

#include <catch2/catch.hpp>

namespace nettare {

std::string printedByTool(const std::string& package, const std::string& command) {
    constexpr int kNotFound = 127;
    FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::string printed;
    std::array<char, 4096> buffer{};
    std::size_t count = 0;
    while ((count = fread(buffer.data(), 1, buffer.size(), pipe)) > 0)
        printed.append(buffer.data(), count);
    const int status = pclose(pipe);
    const std::string program = command.substr(0, command.find(' '));
    if (WIFEXITED(status) && WEXITSTATUS(status) == kNotFound)
        FAIL("The program " << program << " is missing; install the package " << package << ".");
    INFO(command);
    REQUIRE(status == 0);
    return printed;
}

}  // namespace nettare
