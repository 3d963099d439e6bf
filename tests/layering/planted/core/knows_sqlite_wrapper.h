// Planted: a core that opens table files.
#include <SQLiteCpp/SQLiteCpp.h>
