#include "app/fonts/lato.h"

#include <QFontDatabase>
#include <QStringList>

namespace nettare {

namespace {

QString loadedFamily() {
    // Fonts that the system has are asked for first: Qt 6.4 would otherwise read them after ours,
    // and its Lato, whatever the release, would take the place of ours.
    QFontDatabase::families();
    QString family;
    for (const char* face : {"Semibold", "Regular", "Bold", "Black"}) {
        const QString path = QStringLiteral(":/nettare/lato/Lato-%1.ttf").arg(QLatin1String{face});
        const int id = QFontDatabase::addApplicationFont(path);
        if (id < 0) qFatal("The program holds no face Lato-%s.", face);
        family = QFontDatabase::applicationFontFamilies(id).constFirst();
    }
    return family;
}

}  // namespace

QString latoFamily() {
    static const QString family = loadedFamily();
    return family;
}

}  // namespace nettare
