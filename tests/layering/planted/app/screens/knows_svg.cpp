// Planted: a screen that draws a sign past the palette.
#include <QSvgRenderer>
