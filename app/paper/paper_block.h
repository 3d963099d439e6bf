#pragma once

#include <QColor>
#include <QFont>
#include <QString>

#include <functional>

class QPainter;

namespace nettare {

// Sizes are centipoints (0.01 pt).
inline constexpr int kPaperTitleCpt = 1600, kPaperHeadingCpt = 1100, kPaperTextCpt = 900,
                     kPaperSmallCpt = 800;
inline constexpr double kPaperAirCpt = 350;

// Paper is white by day and by night.
inline const QColor kPaperInk = Qt::black;
inline const QColor kPaperInk2{0x55, 0x55, 0x55};

/// A part of a printed sheet that no page break cuts.
struct PaperBlock {
    double heightCpt = 0;
    std::function<void(QPainter& painter, double topCpt)> paint;
    bool withNext = false;  ///< a heading is not left alone at the foot of a page
};

[[nodiscard]] QFont paperFont(int sizeCpt);
[[nodiscard]] QFont boldPaperFont(int sizeCpt);
[[nodiscard]] double wideOnPaper(const QFont& font, const QString& text);

/// A text that wraps, with air below it.
[[nodiscard]] PaperBlock textBlock(const QString& text, const QFont& font, const QColor& ink,
                                   double widthCpt, double airCpt);

void paperHairline(QPainter& painter, double left, double top, double widthCpt);

}  // namespace nettare
