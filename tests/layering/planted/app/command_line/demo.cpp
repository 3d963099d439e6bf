// Planted: a second reader of arguments.
#include <CLI/CLI.hpp>
