#pragma once

#include <QFont>
#include <QPointF>
#include <QStringList>

class QPainter;

namespace nettare {

/// The lines of a text that is `width` wide at most; it breaks between words, and within one that
/// is wider alone.
[[nodiscard]] QStringList wrappedLines(const QString& text, const QFont& font, double width);

/// Draws lines below one another; `at` is the start of the first one's baseline. Returns the
/// baseline after the last.
double drawLines(QPainter& painter, const QStringList& lines, const QFont& font, QPointF at);

/// From baseline to baseline, in the unit of the font's pixels.
[[nodiscard]] double lineStep(const QFont& font);

}  // namespace nettare
