#pragma once

#include "app/theme/palette.h"

#include <QString>

namespace nettare {

/// What Fusion does not draw flat from the palette. Widgets ask for more by dynamic properties, to
/// be set before the widget is shown:
///   QPushButton  "primary": true      the one main action, on cobalt
///   QPushButton  "quiet": true        no border until it is pointed at or focused
///   QPushButton  "segment": true      one of a row of choices; "joined": true behind the first
///   QLabel       "tone": "secondary" | "warning" | "error" | "done" | "accent"
///   QTreeView, QGraphicsView  "onPaper": true   no ground of its own
///   QFrame       "pane": "paper" | "raised"     ground of a pane
///   QFrame       "rim": true          active pane, with the cobalt rim above it
[[nodiscard]] QString styleSheet(Shade shade);

}  // namespace nettare
