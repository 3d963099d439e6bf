// Planted: a test of core that needs Qt.
#include <QtTest>
