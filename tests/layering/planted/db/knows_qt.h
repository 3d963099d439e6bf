// Planted: a store that needs a desktop.
#include <QtCore/QByteArray>
