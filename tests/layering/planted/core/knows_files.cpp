// Planted: a core that reads files.
#include <fstream>
