// Planted: a screen that writes SQL.
#include <SQLiteCpp/Database.h>
