// A planted violation: it leans on what comes before its own header.
#include <vector>

#include "core/leaning.h"
