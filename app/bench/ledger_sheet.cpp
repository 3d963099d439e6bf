#include "app/bench/ledger_sheet.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

#include "app/path/wrapped_text.h"

namespace nettare {

namespace {

struct SheetTexts {
    Q_DECLARE_TR_FUNCTIONS(LedgerSheet)
};

// Widths in centipoints; what is left is for the words.
constexpr double kNumberCpt = 4300, kTimeCpt = 6800, kMassCpt = 4800, kUnitCpt = 1800;
constexpr double kGutterCpt = 600, kRowAirCpt = 250;

/// Where the columns of a line stand.
struct LedgerColumns {
    explicit LedgerColumns(double widthCpt)
        : time{kNumberCpt + kGutterCpt},
          what{time + kTimeCpt + kGutterCpt},
          unit{widthCpt - kUnitCpt},
          net{unit - kGutterCpt},
          tare{net - kMassCpt},
          gross{tare - kMassCpt},
          whatWidth{gross - kMassCpt - what} {}

    double time, what, unit;
    double net, tare, gross;  ///< right edges
    double whatWidth;
};

void rightAligned(QPainter& painter, double right, double base, const QString& text) {
    painter.drawText(QPointF{right - wideOnPaper(painter.font(), text), base}, text);
}

/// A line through the texts of a row of that many lines.
void strike(QPainter& painter, const QFont& font, double left, double right, double base,
            qsizetype lines) {
    constexpr double kStrikeCpt = 60;
    for (qsizetype i = 0; i < lines; ++i) {
        const double middle =
            base + static_cast<double>(i) * lineStep(font) - QFontMetricsF{font}.xHeight() / 2;
        painter.fillRect(QRectF{left, middle, right - left, kStrikeCpt}, kPaperInk);
    }
}

double widest(const QStringList& lines, const QFont& font) {
    double most = 0;
    for (const QString& line : lines) most = std::max(most, wideOnPaper(font, line));
    return most;
}

void paintNumbers(QPainter& painter, const LedgerLine& line, const LedgerColumns& columns,
                  double base) {
    const QFont text = paperFont(kPaperTextCpt), strong = boldPaperFont(kPaperTextCpt);
    painter.setPen(kPaperInk);
    painter.setFont(text);
    rightAligned(painter, columns.gross, base, line.gross);
    rightAligned(painter, columns.tare, base, line.tare);
    painter.setFont(strong);
    rightAligned(painter, columns.net, base, line.net);
    painter.setFont(text);
    painter.drawText(QPointF{columns.unit, base}, line.unit);
    if (line.struck && !line.gross.isEmpty())
        strike(painter, text, columns.gross - wideOnPaper(text, line.gross), columns.net, base, 1);
}

}  // namespace

PaperBlock ledgerHeader(double widthCpt) {
    const QFont font = boldPaperFont(kPaperSmallCpt);
    return {lineStep(font) + 2 * kRowAirCpt, [=](QPainter& painter, double top) {
                const LedgerColumns columns{widthCpt};
                const double base = top + kRowAirCpt + QFontMetricsF{font}.ascent();
                painter.setFont(font);
                painter.setPen(kPaperInk2);
                painter.drawText(QPointF{0, base}, SheetTexts::tr("No., id"));
                painter.drawText(QPointF{columns.time, base}, SheetTexts::tr("Time"));
                painter.drawText(QPointF{columns.what, base}, SheetTexts::tr("What"));
                rightAligned(painter, columns.gross, base, SheetTexts::tr("Gross"));
                rightAligned(painter, columns.tare, base, SheetTexts::tr("Tare"));
                rightAligned(painter, columns.net, base, SheetTexts::tr("Net"));
            }};
}

PaperBlock ledgerBlock(const LedgerLine& line, double widthCpt) {
    const LedgerColumns columns{widthCpt};
    const QFont text = paperFont(kPaperTextCpt), small = paperFont(kPaperSmallCpt);
    const QStringList what = wrappedLines(line.what, text, columns.whatWidth);
    const QStringList note = line.note.isEmpty()
                                 ? QStringList{}
                                 : wrappedLines(line.note, small, widthCpt - columns.what);
    const QStringList time = wrappedLines(line.time, small, kTimeCpt);
    const double words = static_cast<double>(what.size()) * lineStep(text) +
                         static_cast<double>(note.size()) * lineStep(small);
    const double left = std::max(lineStep(text) + lineStep(small),
                                 static_cast<double>(time.size()) * lineStep(small));
    return {std::max(words, left) + 2 * kRowAirCpt, [=](QPainter& painter, double top) {
                paperHairline(painter, 0, top, widthCpt);
                const double base = top + kRowAirCpt + QFontMetricsF{text}.ascent();
                painter.setPen(kPaperInk);
                painter.setFont(text);
                painter.drawText(QPointF{0, base}, line.number);
                const double noteBase = drawLines(painter, what, text, {columns.what, base});
                if (line.struck)
                    strike(painter, text, columns.what, columns.what + widest(what, text), base,
                           what.size());
                paintNumbers(painter, line, columns, base);
                painter.setPen(kPaperInk2);
                drawLines(painter, note, small, {columns.what, noteBase});
                drawLines(painter, time, small, {columns.time, base});
                painter.drawText(QPointF{0, base + lineStep(small)}, line.id);
            }};
}

}  // namespace nettare
