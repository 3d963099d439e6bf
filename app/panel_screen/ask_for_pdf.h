#pragma once

#include <QString>

#include <functional>

class QWidget;

namespace nettare {

/// Asks where a PDF is to be written, offering a name; empty where the cook thought better of it.
using AskForPdf = std::function<QString(QWidget* parent, const QString& suggestedName)>;

/// By the desktop's own file dialog, beginning in the folder of the last answer.
[[nodiscard]] QString askForPdfByDialog(QWidget* parent, const QString& suggestedName);

}  // namespace nettare
