// Planted: a core that paints.
#include <QString>
