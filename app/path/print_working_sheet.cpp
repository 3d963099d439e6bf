#include <QCoreApplication>
#include <QFileInfo>
#include <QFontMetricsF>
#include <QPainter>
#include <QPrinter>

#include "app/panel/panel_fonts.h"
#include "app/path/sheet_blocks.h"
#include "app/path/working_sheet.h"

namespace nettare {

namespace {

constexpr double kCptPerInch = 7200;
constexpr double kMarginCpt = 5000;
constexpr double kFootCpt = 2400;

struct PrintWords {
    Q_DECLARE_TR_FUNCTIONS(WorkingSheet)
};

/// Whether there is a place for the file that is to be written, if one is.
bool takesFile(const QPrinter& printer) {
    if (printer.outputFileName().isEmpty()) return true;
    const QFileInfo file{printer.outputFileName()};
    return file.exists() ? file.isFile() && file.isWritable()
                         : QFileInfo{file.absolutePath()}.isWritable();
}

void paintFoot(QPainter& painter, const WorkingSheet& sheet, QSizeF text, std::size_t page,
               std::size_t pages) {
    const QFont font = panelFont({PanelFace::Regular, 800, true});
    painter.setFont(font);
    painter.setPen(QColor{0x55, 0x55, 0x55});
    const double base = text.height() + kFootCpt;
    const QString number = PrintWords::tr("page %1 of %2").arg(page).arg(pages);
    const double right = text.width() - QFontMetricsF{font}.horizontalAdvance(number);
    painter.drawText(QPointF{right, base}, number);
    const QString name = QFontMetricsF{font}.elidedText(sheet.title, Qt::ElideRight, right - 1000);
    painter.drawText(QPointF{0, base}, name);
}

}  // namespace

bool printWorkingSheet(const WorkingSheet& sheet, QPrinter& printer) {
    if (!takesFile(printer)) return false;
    printer.setFullPage(true);
    QPainter painter;
    if (!painter.begin(&printer)) return false;
    const double scale = printer.resolution() / kCptPerInch;
    const QSizeF paper = printer.pageLayout().fullRectPoints().size().toSizeF() * 100;
    const QSizeF text{paper.width() - 2 * kMarginCpt, paper.height() - 2 * kMarginCpt - kFootCpt};
    painter.scale(scale, scale);
    painter.translate(kMarginCpt, kMarginCpt);
    const auto blocks = blocksOf(sheet, text.width());
    const auto pages = pagesOf(blocks, text.height());
    for (std::size_t page = 0; page < pages.size(); ++page) {
        if (page > 0 && !printer.newPage()) return false;
        const std::size_t end = page + 1 < pages.size() ? pages[page + 1] : blocks.size();
        double top = 0;
        for (std::size_t i = pages[page]; i < end; ++i) {
            blocks[i].paint(painter, top);
            top += blocks[i].heightCpt;
        }
        paintFoot(painter, sheet, text, page + 1, pages.size());
    }
    return painter.end() && printer.printerState() != QPrinter::Error;
}

}  // namespace nettare
