#pragma once

#include <iosfwd>
#include <string>

#include "app/command_line/arguments.h"
#include "core/support/result.h"

namespace nettare {

/// `figures --all`: computes every kept revision of the kitchen at that path anew, on command.jobs
/// threads, and prints a line for each as soon as those before it are printed; their number changes
/// no byte. A revision that cannot be computed gives a sentence on `err` instead. Answers the exit
/// code: 1 where there was any such. Fails as opening the kitchen does, and with FileNotWritable
/// where `out` takes no more.
[[nodiscard]] Result<int> showAllFigures(const FiguresCommand& command, const std::string& path,
                                         std::ostream& out, std::ostream& err);

}  // namespace nettare
