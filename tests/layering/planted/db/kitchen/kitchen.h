// Planted: a kitchen that hands out statements.
#include <sqlite3.h>
