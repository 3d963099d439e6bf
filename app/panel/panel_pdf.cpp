#include "app/panel/panel_pdf.h"

#include "app/files/write_file.h"
#include "app/panel/paint_panel.h"
#include "app/panel/panel_fonts.h"
#include "app/panel/panel_layout.h"
#include "app/panel/start_painting.h"
#include "app/panel/undated_pdf.h"

#include <QBuffer>
#include <QHashSeed>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

namespace nettare {

namespace {

constexpr int kCentipointsPerInch = 7200;
constexpr double kCentipointsPerPoint = 100;

/// While one lives, hashes that are made have a fixed order: Qt writes the fonts of a PDF in it.
class FixedHashOrder {
public:
    FixedHashOrder() { QHashSeed::setDeterministicGlobalSeed(); }
    ~FixedHashOrder() { QHashSeed::resetRandomGlobalSeed(); }
    FixedHashOrder(const FixedHashOrder&) = delete;
    FixedHashOrder& operator=(const FixedHashOrder&) = delete;
};

void paintPdf(QBuffer& buffer, const Panel& panel) {
    const PanelLayout layout = layOutPanel(panel, panelTextWidth);
    const QSizeF sizePt{layout.widthCpt / kCentipointsPerPoint,
                        layout.heightCpt / kCentipointsPerPoint};
    QPdfWriter writer{&buffer};
    writer.setResolution(kCentipointsPerInch);
    // An exact match: else a size near to that of a paper would become it.
    writer.setPageSize(QPageSize{sizePt, QPageSize::Point, QString{}, QPageSize::ExactMatch});
    writer.setPageMargins(QMarginsF{});
    writer.setTitle(QString::fromStdString(panel.title));
    writer.setCreator(QStringLiteral("Nettare"));
    QPainter painter{&writer};
    paintPanel(painter, layout);
}

}  // namespace

std::string panelPdf(const Panel& panel) {
    startPainting();
    const FixedHashOrder fixed;
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    paintPdf(buffer, panel);
    return undatedPdf(buffer.data().toStdString());
}

Result<void> writePanelPdf(const Panel& panel, const std::string& path) {
    return writeFile(path, panelPdf(panel));
}

}  // namespace nettare
