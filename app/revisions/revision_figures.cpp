#include "app/revisions/revision_figures.h"

#include "app/revisions/revision_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "core/publish/number_text.h"

namespace nettare {

namespace {

QString shown(double value, Direction direction) {
    return QString::fromStdString(
        numberAt(factsOf(Component::ENERC_KCAL).decimals, value, direction));
}

Cell energyCell(const Figure& figure) {
    if (figure.complete()) {
        Cell cell = numberCell(shown(figure.value, Direction::Nearest));
        cell.unit = QString::fromStdString(halfWidthText(0, intervalOf(figure).halfWidth));
        return cell;
    }
    Cell cell = numberCell(shown(figure.atLeast, Direction::Floor));
    cell.before = QCoreApplication::translate("RevisionFigures", "at least");
    return cell;
}

}  // namespace

RevisionFigures revisionFiguresOf(const Evaluation& evaluation) {
    const auto& portion = evaluation[Basis::Portion];
    QStringList verdicts;
    for (const TargetVerdict& verdict : evaluation.verdicts) {
        const QString text = verdictText(verdict);
        verdicts << (evaluation.verdicts.size() == 1
                         ? text
                         : targetText(verdict.target) + QStringLiteral(": ") + text);
    }
    return {portion ? energyCell((*portion)[Component::ENERC_KCAL]) : noDataCell(),
            verdicts.isEmpty() ? QCoreApplication::translate("RevisionFigures", "none set")
                               : verdicts.join(QStringLiteral("; "))};
}

}  // namespace nettare
