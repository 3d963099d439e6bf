#pragma once

#include <QWidget>

#include <memory>

#include "app/session/kitchen_session.h"

namespace nettare {

/// A session of the demo kitchen in memory, with the recipe open whose title begins so.
[[nodiscard]] std::unique_ptr<KitchenSession> sampleSession(const char* title = "Charred prawn");

/// Waits for the disk, then until a revision of that number is in the list.
void waitForRevision(KitchenSession& kitchen, int number);

/// Object names of what takes the focus by Tab in there and has no name for a screen reader.
[[nodiscard]] QStringList unnamedFocusables(QWidget& root);

/// Pictures of a screen in both shades at 1280x800 and 1920x1080, where pictures are asked for.
void keepScreenPictures(QWidget& screen, const QString& name);

}  // namespace nettare
