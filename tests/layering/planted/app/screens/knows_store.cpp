// Planted: a screen that reads rows.
#include "db/kitchen/kitchen_store.h"
