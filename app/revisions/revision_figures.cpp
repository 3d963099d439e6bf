#include "app/revisions/revision_figures.h"

#include "app/command_line/kept_figures.h"
#include "app/revisions/revision_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct RevisionFigureWords {
    Q_DECLARE_TR_FUNCTIONS(RevisionFigureWords)
};

constexpr Component kEnergy = Component::ENERC_KCAL;

QString shown(double value, Direction direction) {
    return QString::fromStdString(numberAt(factsOf(kEnergy).decimals, value, direction));
}

Cell energyCell(const Figure& figure) {
    if (figure.complete()) {
        const double halfWidth = intervalOf(figure).halfWidth;
        return numberCell(
            shown(figure.value, Direction::Nearest),
            QString::fromStdString(halfWidthText(factsOf(kEnergy).decimals, halfWidth)));
    }
    Cell cell = numberCell(shown(figure.atLeast, Direction::Floor));
    cell.before = RevisionFigureWords::tr("at least");
    return cell;
}

Cell energyOf(const OpenedRevision& revision) {
    const Evaluation& today = *revision.evaluation;
    const KeptFigures kept{revision.kept.figures, revision.kept.arithmetic};
    const auto figure = keptFigure(kept, Basis::Portion, kEnergy);
    if (!figure) return noDataCell();
    Cell cell = energyCell(*figure);
    const auto& portion = today[Basis::Portion];
    if (portion && differFromToday(kept, today.dossier, today.cooked))
        cell.problem = RevisionFigureWords::tr(
                           "As it was kept. Today's arithmetic comes to %1 kcal, and to "
                           "other figures: the kept ones stay.")
                           .arg(shown((*portion)[kEnergy].value, Direction::Nearest));
    return cell;
}

QString ceilingOf(const std::vector<TargetVerdict>& verdicts) {
    if (verdicts.empty()) return RevisionFigureWords::tr("none set");
    if (verdicts.size() == 1) return verdictText(verdicts.front());
    QStringList all;
    for (const TargetVerdict& verdict : verdicts)
        all << RevisionFigureWords::tr("%1: %2").arg(targetText(verdict.target),
                                                     verdictText(verdict));
    return all.join(QStringLiteral("; "));
}

}  // namespace

RevisionFigures revisionFiguresOf(const OpenedRevision& revision) {
    return {energyOf(revision), ceilingOf(revision.evaluation->verdicts)};
}

}  // namespace nettare
