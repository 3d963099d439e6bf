#pragma once

#include "app/theme/palette.h"
#include "app/theme/system_shade.h"

#include <QObject>

#include <cstdint>

namespace nettare {

enum class ShadeChoice : std::uint8_t { System, Light, Dark };

/// The look of the program while it runs: follows the desktop between light and dark, unless the
/// user chose one. The choice is kept in the user's configuration. Dresses the QApplication, which
/// must live longer.
class Theme : public QObject {
    Q_OBJECT

public:
    explicit Theme(const QDBusConnection& bus = busOfSession(), QObject* parent = nullptr);

    [[nodiscard]] Shade shade() const { return shade_; }
    [[nodiscard]] ShadeChoice choice() const { return choice_; }

    /// Takes effect at once and is kept for the next start.
    void choose(ShadeChoice choice);

signals:
    /// After the program was dressed in another shade than before.
    void changed(nettare::Shade shade);

private:
    void follow();

    SystemShade system_;
    ShadeChoice choice_;
    Shade shade_;
};

}  // namespace nettare
