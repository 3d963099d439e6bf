// Planted: a test of db that needs app.
#include "app/workbench.h"
