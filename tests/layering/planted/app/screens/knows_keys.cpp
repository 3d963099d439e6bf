// Planted: a screen that presses its own keys.
#include <QTest>
