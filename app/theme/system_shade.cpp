#include "app/theme/system_shade.h"

#include <QDBusMessage>
#include <QDBusPendingCall>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QFileInfo>

namespace nettare {

namespace {

constexpr unsigned kPrefersDark = 1;

const QString& portal() {
    static const QString name = QStringLiteral("org.freedesktop.portal.Desktop");
    return name;
}
const QString& portalPath() {
    static const QString name = QStringLiteral("/org/freedesktop/portal/desktop");
    return name;
}
const QString& portalSettings() {
    static const QString name = QStringLiteral("org.freedesktop.portal.Settings");
    return name;
}
const QString& appearanceGroup() {
    static const QString name = QStringLiteral("org.freedesktop.appearance");
    return name;
}
const QString& schemeKey() {
    static const QString name = QStringLiteral("color-scheme");
    return name;
}

/// Read wraps its answer in one variant more than the signal does.
QVariant unwrapped(QVariant value) {
    while (value.canConvert<QDBusVariant>()) value = value.value<QDBusVariant>().variant();
    return value;
}

}  // namespace

SystemShade::SystemShade(const QDBusConnection& bus, QObject* parent) : QObject{parent}, bus_{bus} {
    if (!bus_.isConnected()) return;
    qRegisterMetaType<QDBusVariant>();
    bus_.connect(portal(), portalPath(), portalSettings(), QStringLiteral("SettingChanged"), this,
                 SLOT(take(QString, QString, QDBusVariant)));
    QDBusMessage question = QDBusMessage::createMethodCall(portal(), portalPath(), portalSettings(),
                                                           QStringLiteral("Read"));
    question << appearanceGroup() << schemeKey();
    auto* const call = new QDBusPendingCallWatcher{bus_.asyncCall(question), this};
    connect(call, &QDBusPendingCallWatcher::finished, this, [this, call] {
        takeAnswer(*call);
        call->deleteLater();
    });
}

void SystemShade::takeAnswer(const QDBusPendingCallWatcher& call) {
    const QDBusPendingReply<QDBusVariant> answer = call;
    if (!told_ && !answer.isError()) turnTo(answer.value().variant());
}

void SystemShade::take(const QString& group, const QString& key, const QDBusVariant& value) {
    if (group != appearanceGroup() || key != schemeKey()) return;
    told_ = true;
    turnTo(value.variant());
}

void SystemShade::turnTo(const QVariant& scheme) {
    const Shade asked = unwrapped(scheme).toUInt() == kPrefersDark ? Shade::Dark : Shade::Light;
    if (asked == shade_) return;
    shade_ = asked;
    emit changed(shade_);
}

QDBusConnection busOfSession() {
    const bool named =
        qEnvironmentVariableIsSet("DBUS_SESSION_BUS_ADDRESS") ||
        QFileInfo::exists(qEnvironmentVariable("XDG_RUNTIME_DIR") + QStringLiteral("/bus"));
    return named ? QDBusConnection::sessionBus() : QDBusConnection{QString{}};
}

}  // namespace nettare
