#pragma once

#include <QDBusConnection>
#include <QDBusVariant>
#include <QObject>
#include <QString>

namespace nettare {

/// Plays the desktop's settings portal on a bus. Its public slots are what the bus can call, and
/// have the names that the portal's interface gives them.
class FakePortal : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Settings")

public:
    FakePortal(QDBusConnection bus, unsigned scheme);
    ~FakePortal() override;

    /// Says so to whoever listens.
    void turnTo(unsigned scheme);

public slots:
    /// Wraps its answer twice, as the portal does.
    QDBusVariant Read(const QString& group, const QString& key) const;

signals:
    void SettingChanged(const QString& group, const QString& key, const QDBusVariant& value);

private:
    QDBusConnection bus_;
    unsigned scheme_;
};

}  // namespace nettare
