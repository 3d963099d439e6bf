// Planted: a store that asks the program.
#include "app/workbench.h"
