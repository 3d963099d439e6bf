#include <iostream>
#include <string>
#include <vector>

#include "app/command_line/run.h"
#include "app/start/run_window.h"

int main(int argc, char** argv) {
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    if (const auto start = nettare::windowStart(arguments))
        return nettare::runWindow(argc, argv, *start);
    return nettare::runCommandLine(arguments, std::cout, std::cerr);
}
