#pragma once

#include "core/label/panel.h"

namespace nettare {

/// Invented: two skewers of chicken with a peanut sauce, by the rules of the US panel.
Panel skewerPanel();

/// Invented: the same panel with German texts, the longest that a translator would write.
Panel germanPanel();

}  // namespace nettare
