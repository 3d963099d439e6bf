#pragma once

#include "app/theme/palette.h"

#include <QDBusConnection>
#include <QDBusVariant>
#include <QObject>

class QDBusPendingCallWatcher;

namespace nettare {

/// The shade that the desktop asks for, by the freedesktop portal (org.freedesktop.portal.Settings:
/// org.freedesktop.appearance, color-scheme: 1 dark, 2 light, else no wish). Asked without waiting;
/// light until an answer comes, and for good where there is no bus or no portal.
class SystemShade : public QObject {
    Q_OBJECT

public:
    /// A bus that is not connected is fine.
    explicit SystemShade(const QDBusConnection& bus, QObject* parent = nullptr);

    [[nodiscard]] Shade shade() const { return shade_; }

signals:
    /// Only when it is another than before.
    void changed(nettare::Shade shade);

private slots:
    void take(const QString& group, const QString& key, const QDBusVariant& value);

private:
    void takeAnswer(const QDBusPendingCallWatcher& call);
    void turnTo(const QVariant& scheme);

    QDBusConnection bus_;
    Shade shade_ = Shade::Light;
    /// A change was heard of; the answer to the question at the start is then the older news.
    bool told_ = false;
};

/// The bus of this session, or one that is not connected where the environment names none: libdbus
/// would start one or wait.
[[nodiscard]] QDBusConnection busOfSession();

}  // namespace nettare
