#pragma once

#include "app/start/window_start.h"

namespace nettare {

/// Runs the workbench until its window closes; one sentence on standard error where it cannot
/// start. Answers the exit code: 0 done, 1 refused.
[[nodiscard]] int runWindow(int argc, char** argv, const WindowStart& start);

}  // namespace nettare
