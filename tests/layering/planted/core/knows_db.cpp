// Planted: a core that asks the store.
#include "db/table_file.h"
