// Planted: a core that tests itself.
#include <catch2/catch.hpp>
