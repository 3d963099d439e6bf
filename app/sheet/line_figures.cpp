#include "app/sheet/line_figures.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

#include "app/widgets/mark.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct LineWords {
    Q_DECLARE_TR_FUNCTIONS(LineFigures)
};

/// So many decimals that the half-width shows one or two digits.
int decimalsFor(double halfWidth) {
    if (halfWidth >= 2) return 0;
    return halfWidth >= 0.1 || halfWidth == 0 ? 1 : 2;
}

QString gramsText(int decimals, double grams) {
    return QString::fromStdString(numberAt(decimals, grams));
}

QString wayWords(const SheetLine& line) {
    if (isLeftOut(line.counting)) return LineWords::tr("left out");
    if (!line.way) return LineWords::tr("kept recipe");
    QString words = *line.way == Way::Series ? LineWords::tr("series, %1×").arg(line.readings)
                                             : wordOf(*line.way);
    if (line.scaled) words = LineWords::tr("%1, scaled").arg(words);
    if (line.trimmed) words = LineWords::tr("%1, trimmed").arg(words);
    if (line.sizeNotSaid) words = LineWords::tr("%1, size not said").arg(words);
    return words;
}

/// Only what the uncertainties do not explain: the rest would be noise.
QString disagreeing(const LineGrams& grams) {
    QStringList says;
    if (grams.ways.empty()) return {};
    for (const OpenWay& way : grams.ways) {
        if (&way == &grams.way() || !disagreement(grams.way(), way).beyondUncertainty) continue;
        says +=
            LineWords::tr("%1 says %2 g")
                .arg(wordOf(way.way), gramsText(way.grams.value() < 10 ? 1 : 0, way.grams.value()));
    }
    return says.join(QStringLiteral(", "));
}

LineFigures figuresOf(const SheetLine& line, const LineReport& report) {
    LineFigures figures;
    figures.id = line.id;
    const int decimals = decimalsFor(line.halfWidth);
    figures.grams = gramsText(decimals, line.grams);
    figures.spread = QString::fromStdString(halfWidthText(decimals, line.halfWidth)).mid(2);
    if (line.leftOver > 0) figures.left = gramsText(line.leftOver < 10 ? 1 : 0, line.leftOver);
    figures.way = line.way;
    figures.wayWords = wayWords(line);
    figures.otherWays = disagreeing(report.ways);
    if (line.kcalComplete) figures.kcal = line.kcal;
    figures.share = line.energyShare;
    return figures;
}

}  // namespace

std::vector<LineFigures> lineFigures(const Evaluation& evaluation) {
    const auto lines = sheetLines(evaluation.document, evaluation.dossier, evaluation.cooked);
    std::vector<LineFigures> figures;
    figures.reserve(lines.size());
    for (std::size_t i = 0; i < lines.size(); ++i)
        figures.push_back(figuresOf(lines[i], evaluation.cooked.lines[i]));
    const auto most = std::ranges::max_element(figures, {}, &LineFigures::share);
    if (most == figures.end() || most->share <= 0) return figures;
    const double largest = most->share;
    for (LineFigures& each : figures) each.shareOfMost = each.share / largest;
    return figures;
}

}  // namespace nettare
