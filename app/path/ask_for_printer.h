#pragma once

class QPrinter;
class QWidget;

namespace nettare {

/// The print dialog of the desktop, which can also write a PDF; false where it was left.
[[nodiscard]] bool askForPrinterByDialog(QWidget* window, QPrinter& printer);

}  // namespace nettare
