#pragma once

#include <QSettings>

#include <memory>

namespace nettare {

/// What the user chose for this machine: nettare/nettare.ini in the user's XDG configuration
/// folder. Nothing that a figure depends on stands here. Open for one look or one change.
[[nodiscard]] std::unique_ptr<QSettings> userSettings();

}  // namespace nettare
