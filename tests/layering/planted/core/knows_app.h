// Planted: a core that asks the program.
#include "app/words/error_sentence.h"
