#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include "app/paper/paper_pages.h"
#include "app/path/sheet_blocks.h"
#include "app/path/working_sheet.h"

namespace nettare {

namespace {

struct PrintWords {
    Q_DECLARE_TR_FUNCTIONS(WorkingSheet)
};

}  // namespace

bool printWorkingSheet(const WorkingSheet& sheet, QPrinter& printer) {
    PaperPages pages{printer};
    std::size_t count = 0;
    const auto foot = [&](QPainter& painter, int page) {
        const QFont font = paperFont(kPaperSmallCpt);
        painter.setFont(font);
        painter.setPen(kPaperInk2);
        const QString number = PrintWords::tr("page %1 of %2").arg(page).arg(count);
        const double right = pages.text().width() - wideOnPaper(font, number);
        painter.drawText(QPointF{right, pages.footBase(0)}, number);
        const QString name =
            QFontMetricsF{font}.elidedText(sheet.title, Qt::ElideRight, right - 1000);
        painter.drawText(QPointF{0, pages.footBase(0)}, name);
    };
    if (!pages.begin(foot)) return false;
    const auto blocks = blocksOf(sheet, pages.text().width());
    count = pagesOf(blocks, pages.text().height()).size();
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const bool withNext = blocks[i].withNext && i + 1 < blocks.size();
        if (!pages.add(blocks[i], withNext ? blocks[i + 1].heightCpt : 0)) return false;
    }
    return pages.end();
}

}  // namespace nettare
