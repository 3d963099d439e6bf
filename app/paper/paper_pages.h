#pragma once

#include <QPainter>
#include <QSizeF>

#include "app/paper/paper_block.h"

class QPrinter;

namespace nettare {

/// Pages of a printer, filled from the top, in centipoints of the text area. Prints as blocks come,
/// so that a sheet of any length needs the memory of one block.
class PaperPages {
public:
    /// Paints the foot of a page; `number` counts from 1. Its baseline is at footBase().
    using Foot = std::function<void(QPainter& painter, int number)>;

    explicit PaperPages(QPrinter& printer);

    /// Starts the first page; false where the printer or its file takes nothing.
    [[nodiscard]] bool begin(Foot foot, int footLines = 1);
    [[nodiscard]] QSizeF text() const { return text_; }
    /// Baseline of the foot's line, the first is 0.
    [[nodiscard]] double footBase(int line) const;
    /// Whether it still fits the page.
    [[nodiscard]] bool fits(double heightCpt) const {
        return top_ == 0 || top_ + heightCpt <= text_.height();
    }
    /// False where a new page was refused. `together`: what must stand on the same page with it.
    [[nodiscard]] bool add(const PaperBlock& block, double togetherCpt = 0);
    /// Ends the page that is open and starts another.
    [[nodiscard]] bool newPage();
    [[nodiscard]] bool isAtTop() const { return top_ == 0; }
    [[nodiscard]] int page() const { return page_; }
    /// Paints the last foot and closes the document.
    [[nodiscard]] bool end();

private:
    QPrinter& printer_;
    QPainter painter_;
    Foot foot_;
    QSizeF text_;
    double top_ = 0;
    int page_ = 1;
};

}  // namespace nettare
