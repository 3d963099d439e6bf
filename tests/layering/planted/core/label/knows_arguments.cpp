// Planted: a core that reads the command line.
#include <CLI/CLI.hpp>
