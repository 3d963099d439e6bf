// Planted: a core that opens table files.
#include <sqlite3.h>
