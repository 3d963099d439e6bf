#include "app/gui/support/private_bus.h"

#include "app/gui/support/gui.h"

namespace nettare {

PrivateBus::PrivateBus() {
    daemon_.start(QStringLiteral("dbus-daemon"),
                  {QStringLiteral("--session"), QStringLiteral("--nofork"),
                   QStringLiteral("--nopidfile"), QStringLiteral("--print-address=1"),
                   QStringLiteral("--address=unix:dir=") + folder_.path()});
    REQUIRE(daemon_.waitForStarted(kPatience_ms));
    while (!daemon_.canReadLine()) REQUIRE(daemon_.waitForReadyRead(kPatience_ms));
    address_ = QString::fromLatin1(daemon_.readLine()).trimmed();
}

PrivateBus::~PrivateBus() {
    for (const QString& name : connections_) QDBusConnection::disconnectFromBus(name);
    daemon_.terminate();
    daemon_.waitForFinished(kPatience_ms);
}

QDBusConnection PrivateBus::connection(const QString& name) {
    connections_.push_back(name);
    QDBusConnection made = QDBusConnection::connectToBus(address_, name);
    REQUIRE(made.isConnected());
    return made;
}

}  // namespace nettare
