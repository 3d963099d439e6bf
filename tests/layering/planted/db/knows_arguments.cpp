// Planted: a store that reads the command line.
#include <CLI/App.hpp>
