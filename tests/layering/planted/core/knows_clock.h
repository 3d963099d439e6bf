// Planted: a core that reads the clock.
#include <chrono>
