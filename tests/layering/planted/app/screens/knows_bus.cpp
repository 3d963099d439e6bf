// Planted: a screen that asks the desktop itself.
#include <QDBusConnection>
