#pragma once

#include "core/label/panel.h"
#include "core/support/result.h"

#include <string>

namespace nettare {

/// A panel as a PDF of one page, sized in whole points, with its fonts embedded and its text
/// searchable. The same panel gives the same bytes, at any time and under any locale, time zone and
/// screen scale, as long as Qt is the same. Starts an application by itself (startPainting).
[[nodiscard]] std::string panelPdf(const Panel& panel);

/// Writes that PDF, all or nothing.
/// Fails: FileNotWritable with the file and a "reason", as writeFile does.
[[nodiscard]] Result<void> writePanelPdf(const Panel& panel, const std::string& path);

}  // namespace nettare
