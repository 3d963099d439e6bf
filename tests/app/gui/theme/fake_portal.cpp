#include "app/gui/theme/fake_portal.h"

#include "app/gui/support/gui.h"

namespace nettare {

namespace {
constexpr auto kPortalService = "org.freedesktop.portal.Desktop";
constexpr auto kPortalPath = "/org/freedesktop/portal/desktop";
}  // namespace

FakePortal::FakePortal(QDBusConnection bus, unsigned scheme)
    : bus_{std::move(bus)}, scheme_{scheme} {
    REQUIRE(
        bus_.registerObject(QLatin1String{kPortalPath}, this,
                            QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllSignals));
    REQUIRE(bus_.registerService(QLatin1String{kPortalService}));
}

FakePortal::~FakePortal() {
    bus_.unregisterService(QLatin1String{kPortalService});
    bus_.unregisterObject(QLatin1String{kPortalPath});
}

void FakePortal::turnTo(unsigned scheme) {
    scheme_ = scheme;
    emit SettingChanged(QStringLiteral("org.freedesktop.appearance"),
                        QStringLiteral("color-scheme"), QDBusVariant{scheme_});
}

QDBusVariant FakePortal::Read(const QString&, const QString&) const {
    return QDBusVariant{QVariant::fromValue(QDBusVariant{scheme_})};
}

}  // namespace nettare
