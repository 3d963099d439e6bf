#include "app/paper/paper_pages.h"

#include <QFileInfo>
#include <QPrinter>

#include "db/is_database.h"

namespace nettare {

namespace {

constexpr double kCptPerInch = 7200;
constexpr double kMarginCpt = 5000;
constexpr double kFootCpt = 2400;
constexpr double kFootLineCpt = 1200;

/// Whether there is a place for the file that is to be written, if one is.
bool takesFile(const QPrinter& printer) {
    if (printer.outputFileName().isEmpty()) return true;
    const QFileInfo file{printer.outputFileName()};
    if (isDatabase(file.filePath().toStdString())) return false;
    return file.exists() ? file.isFile() && file.isWritable()
                         : QFileInfo{file.absolutePath()}.isWritable();
}

}  // namespace

PaperPages::PaperPages(QPrinter& printer) : printer_{printer} {}

bool PaperPages::begin(Foot foot, int footLines) {
    if (!takesFile(printer_)) return false;
    foot_ = std::move(foot);
    printer_.setFullPage(true);
    if (!painter_.begin(&printer_)) return false;
    const double scale = printer_.resolution() / kCptPerInch;
    const QSizeF paper = printer_.pageLayout().fullRectPoints().size().toSizeF() * 100;
    text_ = {paper.width() - 2 * kMarginCpt,
             paper.height() - 2 * kMarginCpt - kFootCpt - (footLines - 1) * kFootLineCpt};
    painter_.scale(scale, scale);
    painter_.translate(kMarginCpt, kMarginCpt);
    return true;
}

double PaperPages::footBase(int line) const {
    return text_.height() + kFootCpt + line * kFootLineCpt;
}

bool PaperPages::add(const PaperBlock& block, double togetherCpt) {
    if (!fits(block.heightCpt + togetherCpt) && !newPage()) return false;
    block.paint(painter_, top_);
    top_ += block.heightCpt;
    return true;
}

bool PaperPages::newPage() {
    foot_(painter_, page_);
    top_ = 0;
    ++page_;
    return printer_.newPage();
}

bool PaperPages::end() {
    foot_(painter_, page_);
    return painter_.end() && printer_.printerState() != QPrinter::Error;
}

}  // namespace nettare
