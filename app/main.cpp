#include <iostream>
#include <string>
#include <vector>

#include "app/command_line/run.h"

int main(int argc, char** argv) {
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    return nettare::runCommandLine(arguments, std::cout, std::cerr);
}
