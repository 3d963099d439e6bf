#include "app/theme/user_settings.h"

namespace nettare {

std::unique_ptr<QSettings> userSettings() {
    const QString name = QStringLiteral("nettare");
    return std::make_unique<QSettings>(QSettings::IniFormat, QSettings::UserScope, name, name);
}

}  // namespace nettare
